using FixScore.Criteria.Documentation;

namespace FixScore.Criteria.Tests.Documentation;

public sealed class Documentation_laws
{
    static readonly DocumentationCriterion Criterion = new();

    static readonly Gen<Document> AnyDocument = Gen.Select(
        Gen.Enum<DocumentSubject>(), Gen.Enum<Audience>(), Gen.Enum<DocumentCost>(), Gen.Int[0, 12], (subject, audience, cost, years) =>
            new Document { Subject = subject, Audience = audience, Cost = cost, Years = years });

    static readonly Gen<Document[]> Documents = AnyDocument.Array[1, 12];

    [Fact]
    public void Taking_an_observation_away_only_widens() => Gen.Select(Documents, Gen.Int[0, 7].Array[12]).Sample((documents, masks) =>
    {
        var open = documents.Select((document, i) => Opened(document, masks[i])).ToArray();
        Assert.True(Score(open).Contains(Score(documents)));
    });

    [Fact]
    public void Without_the_list_everything_is_possible() => Documents.Sample(documents =>
        Assert.True(Criterion.On(With(documents) with { Documentation = default }).Known().Contains(Score(documents))));

    [Fact]
    public void A_document_for_more_people_cheaper_or_longer_never_lowers_the_score() => Gen.Select(Documents, Gen.Int[0, 2]).Sample((documents, what) =>
    {
        Document[] better = [Better(documents[0], what), .. documents[1..]];
        var (before, after) = (Score(documents), Score(better));
        Assert.True(before.Low <= after.Low && before.High <= after.High);
    });

    [Fact]
    public void The_order_of_documents_does_not_matter() => Documents.Sample(documents =>
        Assert.Equal(Score(documents), Score([.. documents.Reverse()])));

    [Fact]
    public void Reasons_point_at_what_is_there() => Documents.Sample(documents => Criterion.On(With(documents)).PointsInto(With(documents)));

    static Interval Score(params Document[] documents) => Criterion.On(With(documents)).Score;

    static TeardownRecord With(Document[] documents) => Sample.Record(Sample.Part("frame")) with { Documentation = [.. documents] };

    static Document Opened(Document document, int mask) => document with
    {
        Audience = (mask & 1) > 0 ? default : document.Audience,
        Cost = (mask & 2) > 0 ? default : document.Cost,
        Years = (mask & 4) > 0 ? null : document.Years,
    };

    static Document Better(Document document, int what) => what switch
    {
        0 => document with { Audience = (Audience)Math.Max(0, (int)document.Audience.Stated[0] - 1) },
        1 => document with { Cost = (DocumentCost)Math.Max(0, (int)document.Cost.Stated[0] - 1) },
        _ => document with { Years = document.Years!.Value.Min!.Value + 1 },
    };
}
