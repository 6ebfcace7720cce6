using FixScore.Criteria.Spares;

namespace FixScore.Criteria.Tests.Spares;

public sealed class Spare_availability_laws
{
    static readonly SpareAvailabilityCriterion Criterion = new();
    static readonly string[] Few = ["display-assembly", "battery", "button", "speaker"];

    static readonly (Option, object) Ladder = (
        SpareAvailabilityOptions.Ladder, Levels.Of(("display-assembly", 20m), ("battery", 60m), ("button", 90m), ("speaker", 90m)));

    /// <summary>What may be recorded of a role: 0 nothing, 1 its absence, 2 a part without spare, else the audiences its spare may have.</summary>
    static readonly Gen<int[]> States = Gen.Int[0, 17].Array[4];

    [Fact]
    public void The_score_is_the_hull_of_all_that_can_be() => Gen.Select(States, Gen.Enum<WhenNoLevel>()).Sample((states, noLevel) =>
    {
        (Option, object)[] options = [Ladder, (Options.NoLevel, noLevel)];
        var all = Completions(states).Select(full => Criterion.On(Record(full), options).Score);
        Assert.Equal(Interval.HullOf(all), Criterion.On(Record(states), options).Score);
    }, iter: 300);

    [Fact]
    public void Wider_sale_never_lowers_the_score() => Gen.Select(States, Gen.Int[0, 3]).Sample((states, which) =>
    {
        int[] better = [.. states];
        better[which] = Exactly(Audience.Public);
        (Option, object)[] options = [Ladder, (Options.NoLevel, WhenNoLevel.Lowest)];
        var (before, after) = (Criterion.On(Record(states), options).Score, Criterion.On(Record(better), options).Score);
        Assert.True(before.Low <= after.Low && before.High <= after.High);
    });

    [Fact]
    public void Not_knowing_the_joints_only_widens() => Gen.Select(States, Gen.Int[0, 3], Gen.Int[0, 3]).Sample((states, one, other) =>
    {
        var parts = Record(states).Parts.Select(part => part.Id).ToArray();
        var tied = Record(states) with
        {
            Joints = [Sample.Joint("j", JointKind.Solder, parts[one % parts.Length], parts[other % parts.Length]) with { Integral = true }],
        };
        Assert.True(Criterion.On(tied with { Joints = default }, Ladder).Known().Contains(Criterion.On(tied, Ladder).Score));
    });

    [Fact]
    public void Reasons_point_at_what_is_there() => States.Sample(states => Criterion.On(Record(states), Ladder).PointsInto(Record(states)));

    static int Exactly(Audience audience) => 2 + (1 << (int)audience);

    static IEnumerable<int[]> Completions(int[] states) => states.Aggregate(
        (IEnumerable<int[]>)[[]], (sofar, state) => sofar.SelectMany(each => Completions(state), (each, next) => (int[])[.. each, next]));

    static IEnumerable<int> Completions(int state)
    {
        if (state == 1) return [1];
        var sold = Enum.GetValues<Audience>().Where(audience => state <= 2 || ((state - 2) & (1 << (int)audience)) > 0).Select(Exactly);
        return state == 0 ? sold.Prepend(1) : sold;
    }

    // A spare for a part outside the ladder keeps the list from being empty, which would say that there is none.
    static TeardownRecord Record(int[] states) => Sample.Record([Sample.Part("frame"), .. Of(states, state => state >= 2, Part)]) with
    {
        Joints = [],
        Absent = [.. Of(states, state => state == 1, (role, _) => role)],
        Spares = [Offered.Spare("frame", Audience.Nobody), .. Of(states, state => state > 2, Spare)],
    };

    static IEnumerable<T> Of<T>(int[] states, Func<int, bool> which, Func<string, int, T> make) =>
        Few.Zip(states).Where(pair => which(pair.Second)).Select(pair => make(pair.First, pair.Second));

    static Part Part(string role, int state) => Sample.Part(role);

    static Spare Spare(string role, int state) =>
        Offered.Spare(role, new([.. Enum.GetValues<Audience>().Where(audience => ((state - 2) & (1 << (int)audience)) > 0)]));
}
