using FixScore.Criteria.Safety;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Safety;

public sealed class Hazard_exposure_laws
{
    static readonly HazardExposureCriterion Criterion = new();
    static readonly Gen<TeardownRecord> Records = Gen.Int[1, 5000].Select(RecordGenerator.Generate);

    [Fact]
    public void Taking_hazards_or_tools_away_only_widens() => Gen.Select(Records, Gen.Enum<Combine>(), Gen.Int[0, 9], Gen.Int[0, 4]).Sample((record, combine, which, what) =>
    {
        var less = Without(record, which, what);
        foreach (var part in record.Parts) Assert.True(Of(less, part.Id, combine).Contains(Of(record, part.Id, combine)));
    }, iter: 200);

    [Fact]
    public void One_hazard_more_never_raises_the_score() => Gen.Select(Records, Gen.Enum<Combine>(), Gen.Enum<Hazard>(), Gen.Int[0, 9]).Sample((record, combine, hazard, which) =>
    {
        var more = record with
        {
            Parts = [.. record.Parts.Select((part, i) => i == which && part.Hazards.IsRecorded ? part with { Hazards = [.. part.Hazards, hazard] } : part)],
        };
        foreach (var part in record.Parts)
        {
            var (before, after) = (Of(record, part.Id, combine), Of(more, part.Id, combine));
            Assert.True(after.Low <= before.Low && after.High <= before.High);
        }
    }, iter: 150);

    [Fact]
    public void Reasons_point_at_what_is_there() => Gen.Select(Records, Gen.Enum<Combine>()).Sample((record, combine) =>
    {
        foreach (var part in record.Parts) Criterion.On(record, part.Id, (HazardExposureOptions.Combine, combine)).PointsInto(record);
    }, iter: 100);

    static Interval Of(TeardownRecord record, string part, Combine combine) => Criterion.On(record, part, (HazardExposureOptions.Combine, combine)).Known();

    static TeardownRecord Without(TeardownRecord record, int which, int what) => what switch
    {
        0 => record with { Parts = [.. record.Parts.Select((part, i) => i == which ? part with { Hazards = default } : part)] },
        1 => Work(record, (work, i) => i == which ? work with { Hazards = default } : work),
        2 => Work(record, (work, i) => i == which ? work with { Tools = default, OrTools = [] } : work),
        3 => Work(record, (work, _) => work with { Tools = default, OrTools = [] }),
        _ => record with { Operations = default, Milestones = default },
    };

    static TeardownRecord Work(TeardownRecord record, Func<Operation, int, Operation> change) =>
        record.Operations.IsRecorded ? record with { Operations = [.. record.Operations.Select(change)] } : record;
}
