using FixScore.Criteria.Documentation;

namespace FixScore.Criteria.Tests.Documentation;

public sealed class Repair_information_laws
{
    static readonly RepairInformationCriterion Criterion = new();
    static readonly DocumentSubject[] Few = [DocumentSubject.ErrorCodes, DocumentSubject.ExplodedView, DocumentSubject.BoardSchematic];

    static readonly (Option, object)[] Settings =
    [
        (RepairInformationOptions.Subjects, ImmutableArray.Create("error-codes", "exploded-view", "board-schematic")),
        (RepairInformationOptions.Levels, Levels.Of(("public-free", 90m), ("professionals-free", 50m), ("professionals-reasonable-fee", 30m))),
        (Options.NoLevel, WhenNoLevel.Lowest),
    ];

    /// <summary>Documents as they are, and a mask of what is not known of each: 1 audience, 2 cost.</summary>
    static readonly Gen<(Document[] Documents, int[] Masks)> Cases = Gen.Select(
        Gen.Select(Gen.Int[0, 2], Gen.Enum<Audience>(), Gen.Enum<DocumentCost>(), (subject, audience, cost) =>
            new Document { Subject = Few[subject], Audience = audience, Cost = cost }).Array[1, 3],
        Gen.Int[0, 3].Array[3], (documents, masks) => (documents, masks));

    [Fact]
    public void The_score_is_the_hull_of_all_that_can_be() => Cases.Sample(each =>
    {
        Document[] open = [.. each.Documents.Select((document, i) => Opened(document, each.Masks[i]))];
        Assert.Equal(Interval.HullOf(Completions(open).Select(Score)), Score(open));
    }, iter: 200);

    [Fact]
    public void Wider_or_cheaper_documents_never_lower_the_score() => Gen.Select(Cases, Gen.Bool).Sample((each, cheaper) =>
    {
        var first = each.Documents[0];
        var better = cheaper ? first with { Cost = DocumentCost.Free } : first with { Audience = Audience.Public };
        var (before, after) = (Score(each.Documents), Score([better, .. each.Documents[1..]]));
        Assert.True(before.Low <= after.Low && before.High <= after.High);
    });

    [Fact]
    public void The_order_of_documents_does_not_matter() => Cases.Sample(each =>
        Assert.Equal(Score(each.Documents), Score([.. each.Documents.Reverse()])));

    [Fact]
    public void Reasons_point_at_what_is_there() => Cases.Sample(each =>
        Criterion.On(With(each.Documents), Settings).PointsInto(With(each.Documents)));

    static Interval Score(params Document[] documents) => Criterion.On(With(documents), Settings).Score;

    static TeardownRecord With(Document[] documents) => Sample.Record(Sample.Part("frame")) with { Documentation = [.. documents] };

    static Document Opened(Document document, int mask) => document with
    {
        Audience = (mask & 1) > 0 ? default : document.Audience,
        Cost = (mask & 2) > 0 ? default : document.Cost,
    };

    // A subject of which nothing is listed may have any document.
    static IEnumerable<Document[]> Completions(Document[] open)
    {
        var unlisted = Few.Except(open.Select(document => document.Subject)).Select(subject => new Document { Subject = subject });
        return open.Concat(unlisted).Aggregate((IEnumerable<Document[]>)[[]], (sofar, document) =>
            sofar.SelectMany(each => Exact(document), (each, next) => (Document[])[.. each, next]));
    }

    static IEnumerable<Document> Exact(Document document) =>
        from audience in document.Audience.Possible()
        from cost in document.Cost.Possible()
        select document with { Audience = audience, Cost = cost };
}
