using FixScore.Criteria.Documentation;

namespace FixScore.Criteria.Tests.Documentation;

/// <summary>Subjects after Annex II of Regulation (EU) 2023/1670; points and factors are own judgement, no source.</summary>
public sealed class Documentation_tests
{
    static readonly DocumentationCriterion Criterion = new();
    static readonly Document Free = new()
    {
        Subject = DocumentSubject.WiringDiagram, Audience = Audience.Public, Cost = DocumentCost.Free, Years = 7,
    };

    [Fact]
    public void A_list_that_was_not_recorded_is_unknown() =>
        Assert.Equal(OutcomeKind.Unknown, Criterion.On(Sample.Record(Sample.Part("frame"))).Kind);

    [Fact]
    public void An_empty_list_says_that_there_is_nothing()
    {
        var outcome = Criterion.On(With());
        Assert.Equal(0, outcome.Score);
        Assert.Equal("/documentation", outcome.Because("no-documents").Pointers[0].Text);
    }

    [Fact]
    public void All_subjects_public_free_and_for_seven_years_have_the_top()
    {
        Document[] all = [.. Enum.GetValues<DocumentSubject>().Select(subject => Free with { Subject = subject })];
        Assert.Equal(100, Criterion.On(With(all)).Score);
        Assert.Equal(14, Criterion.On(With(all)).Reasons.Length);
    }

    [Fact]
    public void A_subject_that_is_not_listed_may_have_any_points()
    {
        var outcome = Criterion.On(With(Free), Asking("wiring-diagram", "diagnostics"));
        Assert.Equal(new Interval(50, 100), outcome.Score);
        Assert.Equal("diagnostics", Assert.Single(outcome.Missing).What);
    }

    [Fact]
    public void The_audience_sets_the_points()
    {
        Scores(100, Free);
        Scores(70, Free with { Audience = Audience.Repairers });
        Scores(15, Free with { Audience = Audience.Authorised });
        Scores(0, Free with { Audience = Audience.Nobody, Cost = default, Years = null });
        Scores(new(70, 100), Free with { Audience = new(Audience.Public, Audience.Repairers) });
        Scores(new(0, 100), Free with { Audience = default });
    }

    [Fact]
    public void A_fee_leaves_part_of_the_points()
    {
        Scores(70, Free with { Cost = DocumentCost.ReasonableFee });
        Scores(40, Free with { Cost = DocumentCost.Fee });
        Scores(new(40, 100), Free with { Cost = default });
        Assert.Equal(50, Criterion.On(
            With(Free with { Cost = DocumentCost.Fee }), Asking("wiring-diagram"), (DocumentationOptions.FeeFactor, 0.5m)).Score);
    }

    [Fact]
    public void Fewer_years_than_wanted_leave_their_share()
    {
        Scores(50, Free with { Years = 3.5m });
        Scores(100, Free with { Years = 10 });
        Scores(new(50, 100), Free with { Years = new(3.5m, null) });
        Scores(new(0, 100), Free with { Years = null });
        Assert.Equal(100, Criterion.On(
            With(Free with { Years = null }), Asking("wiring-diagram"), (DocumentationOptions.YearsWanted, 0m)).Score);
    }

    [Fact]
    public void The_best_document_of_a_subject_counts() =>
        Scores(100, Free with { Audience = Audience.Authorised }, Free, Free with { Cost = DocumentCost.Fee });

    [Fact]
    public void A_document_about_some_parts_counts_and_the_reason_names_them()
    {
        var outcome = Criterion.On(With(Free with { Parts = ["frame"] }), Asking("wiring-diagram"));
        Assert.Equal(100, outcome.Score);
        Assert.EndsWith("about frame only.", outcome.Because("subject-of-parts").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reason_says_what_was_found_and_where()
    {
        var reason = Criterion.On(With(Free with { Cost = DocumentCost.ReasonableFee }), Asking("wiring-diagram")).Because("subject");
        Assert.Equal("wiring-diagram: audience public, cost reasonable-fee, for 7 years.", reason.Text);
        Assert.Equal("/documentation/0", reason.Pointers[0].Text);
        Assert.Equal<Interval?>(70, reason.Points);
    }

    [Fact]
    public void A_profile_that_asks_for_nothing_is_not_applicable() =>
        Assert.Equal(OutcomeKind.NotApplicable, Criterion.On(With(Free), Asking()).Kind);

    [Fact]
    public void A_subject_asked_for_twice_counts_once() =>
        Assert.Equal(new Interval(50, 100), Criterion.On(With(Free), Asking("wiring-diagram", "diagnostics", "diagnostics")).Score);

    static void Scores(Interval expected, params ReadOnlySpan<Document> documents)
    {
        var outcome = Criterion.On(With(documents), Asking("wiring-diagram"));
        Assert.Equal(expected, outcome.Score);
        outcome.PointsInto(With(documents));
    }

    static (Option, object) Asking(params ImmutableArray<string> subjects) => (DocumentationOptions.Subjects, subjects);

    static TeardownRecord With(params ReadOnlySpan<Document> documents) =>
        Sample.Record(Sample.Part("frame")) with { Documentation = EntryList.Of(documents) };
}
