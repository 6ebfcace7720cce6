using FixScore.Criteria.Documentation;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Documentation;

/// <summary>Regulation (EU) 2023/1669 Annex IV point 5, score for repair information; subjects after Regulation (EU) 2023/1670 Annex II 1.1(2)(e).</summary>
public sealed class Repair_information_tests
{
    static readonly RepairInformationCriterion Criterion = new();
    static readonly (Option, object) Lowest = (Options.NoLevel, WhenNoLevel.Lowest);
    static readonly Document Free = new() { Subject = DocumentSubject.WiringDiagram, Audience = Audience.Public, Cost = DocumentCost.Free };

    /// <summary>Regulation (EU) 2023/1670 Annex II B and D 1.1(2)(e); of disassembly map or exploded view only the latter.</summary>
    static readonly DocumentSubject[] Demanded =
    [
        DocumentSubject.Identification, DocumentSubject.ExplodedView, DocumentSubject.WiringDiagram, DocumentSubject.BoardSchematic,
        DocumentSubject.ToolsList, DocumentSubject.ErrorCodes, DocumentSubject.Diagnostics, DocumentSubject.SoftwareReset,
        DocumentSubject.FailureRecords, DocumentSubject.RepairerRegistration,
    ];

    [Theory]
    [InlineData(Audience.Public, DocumentCost.Free, Audience.Repairers, 5)] // Annex IV point 5: public and free except board diagrams, which are free to professionals
    [InlineData(Audience.Public, DocumentCost.Free, Audience.Public, 5)] // the same with public board diagrams
    [InlineData(Audience.Repairers, DocumentCost.Free, Audience.Repairers, 3)] // free for professional repairers
    [InlineData(Audience.Repairers, DocumentCost.ReasonableFee, Audience.Repairers, 1)] // for professionals against a reasonable, proportionate fee
    [InlineData(Audience.Public, DocumentCost.ReasonableFee, Audience.Repairers, 1)] // a fee for everyone is one for professionals too
    public void The_law_gives_one_three_or_five_points(Audience audience, DocumentCost cost, Audience board, int points)
    {
        Document[] all = [.. Demanded.Select(subject => new Document
        {
            Subject = subject,
            Audience = subject == DocumentSubject.BoardSchematic ? board : audience,
            Cost = subject == DocumentSubject.BoardSchematic ? DocumentCost.Free : cost,
        })];
        Assert.Equal(points, Criterion.Judge(Contexts.For(Criterion, new RecordCase(With(all)), new Scale(1, 5))).Score);
    }

    [Theory]
    [InlineData(Audience.Repairers, DocumentCost.Fee)]
    [InlineData(Audience.Authorised, DocumentCost.Free)]
    [InlineData(Audience.Nobody, DocumentCost.Free)]
    public void What_professionals_cannot_get_at_a_reasonable_fee_has_no_level(Audience audience, DocumentCost cost)
    {
        var document = Free with { Audience = audience, Cost = cost };
        Scores(new(0, 100), document);
        Assert.Equal(0, Criterion.On(With(document), Asking("wiring-diagram"), Lowest).Score);
    }

    [Fact]
    public void The_worst_subject_counts()
    {
        var codes = Free with { Subject = DocumentSubject.ErrorCodes, Audience = Audience.Repairers };
        Assert.Equal(50, Criterion.On(With(Free, codes), Asking("wiring-diagram", "error-codes")).Score);
    }

    [Fact]
    public void Board_diagrams_for_a_fee_are_no_longer_free()
    {
        var board = Free with { Subject = DocumentSubject.BoardSchematic, Audience = Audience.Repairers };
        Assert.Equal(100, Criterion.On(With(board), Asking("board-schematic")).Score);
        Assert.Equal(0, Criterion.On(With(board with { Cost = DocumentCost.ReasonableFee }), Asking("board-schematic")).Score);
        Assert.Equal(50, Criterion.On(With(board), Asking("board-schematic"), (RepairInformationOptions.BoardSubjects, Words())).Score);
    }

    [Fact]
    public void Either_of_two_subjects_will_do()
    {
        Assert.Equal(100, Criterion.On(With(Free), Asking("exploded-view-or-wiring-diagram")).Score);
        Assert.Equal(100, Criterion.On(With(Free, Free with { Subject = DocumentSubject.ExplodedView, Audience = Audience.Nobody }),
            Asking("exploded-view-or-wiring-diagram")).Score);
    }

    [Fact]
    public void The_best_document_of_a_subject_counts() => Scores(100, Free with { Audience = Audience.Nobody }, Free);

    [Fact]
    public void What_is_unknown_gives_the_hull_of_all_that_is_possible()
    {
        Scores(new(50, 100), Free with { Audience = new(Audience.Public, Audience.Repairers) });
        Scores(new(0, 50), Free with { Audience = Audience.Repairers, Cost = new(DocumentCost.Free, DocumentCost.ReasonableFee) });
        Scores(new(50, 100), Free with { Audience = Audience.Repairers }, Free with { Audience = default, Cost = default });
        Assert.Equal(new Interval(0, 50), Criterion.On(
            With(Free with { Audience = Audience.Repairers }), Asking("wiring-diagram", "diagnostics"), Lowest).Score);
    }

    [Fact]
    public void A_list_that_was_not_recorded_is_unknown_and_an_empty_one_says_there_is_nothing()
    {
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Sample.Record(Sample.Part("frame"))).Kind);
        Assert.Equal(0, Criterion.On(With(), Lowest).Score);
        Criterion.On(With()).Because("no-documents");
    }

    [Fact]
    public void Documents_about_some_parts_are_judged_by_the_worst_of_these_parts()
    {
        var frame = Free with { Parts = ["frame"] };
        var both = Free with { Parts = ["frame", "mainboard"], Audience = Audience.Repairers };
        Scores(100, frame);
        Scores(50, frame, both);
        Scores(50, Free with { Audience = Audience.Repairers }, frame);
        Assert.Equal("wiring-diagram: professionals-free, for frame, mainboard only.",
            Criterion.On(With(frame, both), Asking("wiring-diagram")).Because("subject-access-of-parts").Text);
    }

    [Fact]
    public void A_reason_says_what_was_found_and_where()
    {
        var outcome = Criterion.On(With(Free), Asking("wiring-diagram", "diagnostics"));
        Assert.Equal("wiring-diagram: public-free.", outcome.Because("subject-access").Text);
        Assert.Equal("/documentation/0", outcome.Because("subject-access").Pointers[0].Text);
        Assert.Equal("diagnostics", Assert.Single(outcome.Missing).What);
        outcome.Because("subject-not-listed");
    }

    [Fact]
    public void A_profile_that_asks_for_nothing_is_not_applicable() =>
        Assert.Equal(OutcomeKind.NotApplicable, Criterion.On(With(Free), Asking()).Kind);

    static void Scores(Interval expected, params ReadOnlySpan<Document> documents)
    {
        var outcome = Criterion.On(With(documents), Asking("wiring-diagram"));
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(With(documents));
    }

    static (Option, object) Asking(params ImmutableArray<string> subjects) => (RepairInformationOptions.Subjects, subjects);

    static ImmutableArray<string> Words(params ImmutableArray<string> words) => words;

    static TeardownRecord With(params ReadOnlySpan<Document> documents) =>
        Sample.Record(Sample.Part("frame"), Sample.Part("mainboard")) with { Documentation = EntryList.Of(documents) };
}
