using FixScore.Criteria.Time;
using FixScore.Testing;

namespace FixScore.Criteria.Tests.Time;

public sealed class Disassembly_time_laws
{
    static readonly DisassemblyTimeCriterion Criterion = new();
    static readonly Gen<TeardownRecord> Records = Gen.Int[1, 5000].Select(RecordGenerator.Generate);

    static readonly Gen<(Waiting Waiting, Basis Basis)> Settings = Gen.Select(
        Gen.Bool.Select(count => count ? Waiting.Count : Waiting.LeaveOut), Gen.Enum<Basis>(), (waiting, basis) => (waiting, basis));

    [Fact]
    public void Losing_all_times_all_waits_or_all_counts_only_widens() => Gen.Select(Records, Settings, Gen.Int[0, 3]).Sample((record, settings, what) =>
    {
        var less = Without(record, what);
        foreach (var part in record.Parts)
            Assert.True(Of(less, part.Id, settings).Known().Contains(Of(record, part.Id, settings).Known()));
    }, iter: 150);

    [Fact]
    public void A_longer_operation_never_raises_the_score() => Gen.Select(Gen.Int[0, 2000].Array[3], Gen.Int[0, 2], Gen.Int[1, 500]).Sample((seconds, which, more) =>
    {
        var before = Of(seconds);
        seconds[which] += more;
        var after = Of(seconds);
        Assert.True(after.Low <= before.Low && after.High <= before.High);
    });

    [Fact]
    public void Leaving_the_wait_out_never_lowers_the_score() => Gen.Select(Records, Gen.Enum<Basis>()).Sample((record, basis) =>
    {
        foreach (var part in record.Parts)
        {
            var (counted, left) = (Of(record, part.Id, (Waiting.Count, basis)).Known(), Of(record, part.Id, (Waiting.LeaveOutRecorded, basis)).Known());
            Assert.True(counted.Low <= left.Low && counted.High <= left.High);
        }
    }, iter: 100);

    [Fact]
    public void Reasons_point_at_what_is_there() => Gen.Select(Records, Settings).Sample((record, settings) =>
    {
        foreach (var part in record.Parts) Of(record, part.Id, settings).PointsInto(record);
    }, iter: 100);

    static Interval Of(int[] seconds) => Criterion.On(Benched.Phone(seconds[0], 0, seconds[1], seconds[2]).Build(), "battery").Score;

    static Outcome Of(TeardownRecord record, string part, (Waiting Waiting, Basis Basis) settings) => Criterion.On(
        record, part, (DisassemblyTimeOptions.Waiting, settings.Waiting), (DisassemblyTimeOptions.Basis, settings.Basis));

    static TeardownRecord Without(TeardownRecord record, int what) => what switch
    {
        _ when !record.Operations.IsRecorded => record,
        0 => record with { Operations = [.. record.Operations.Select(each => each with { Seconds = null, WaitSeconds = null })] },
        1 => record with { Operations = [.. record.Operations.Select(each => each with { WaitSeconds = null })] },
        2 => record with { Joints = !record.Joints.IsRecorded ? default : [.. record.Joints.Select(each => each with { Count = new(0, null) })] },
        _ => record with { Operations = default, Milestones = default },
    };
}
