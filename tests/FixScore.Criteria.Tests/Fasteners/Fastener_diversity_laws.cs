using FixScore.Criteria.Fasteners;

namespace FixScore.Criteria.Tests.Fasteners;

public sealed class Fastener_diversity_laws
{
    static readonly FastenerDiversityCriterion Criterion = new();
    static readonly string[] Drives = ["cross-h", "slot", "square"];

    static readonly Gen<Joint> Exact = Gen.Select(Gen.Int[0, 2], Gen.Int[1, 3], Gen.Int[1, 9], (drive, length, count) =>
        Sample.Screw("s", count, Drives[drive], 1.2m, length));

    static readonly Gen<Joint[]> Screws = Exact.Array[1, 6].Select(Numbered);

    [Fact]
    public void The_order_of_joints_does_not_matter() =>
        Screws.SelectMany(screws => Gen.Shuffle(screws.ToArray()), (screws, shuffled) => (screws, shuffled)).Sample((screws, shuffled) =>
            Assert.Equal(Criterion.On(Sample.Held(screws)).Score, Criterion.On(Sample.Held(shuffled)).Score));

    [Fact]
    public void The_effective_number_lies_between_one_and_the_number_of_types() => Screws.Sample(screws =>
    {
        var facts = FastenerDiversityFacts.Of(Sample.Held(screws));
        Assert.InRange(facts.Effective.Low, 1, facts.Types.Length);
        Assert.True(facts.Effective.IsExact);
    });

    // A single one: a new type in great numbers would outweigh the others, and nearly all screws would be alike.
    [Fact]
    public void A_screw_of_a_new_type_never_raises_the_score() => Screws.Sample(screws =>
    {
        var added = Sample.Screw("added", 1, "hexalobular", 1.2m, 3);
        Assert.True(Criterion.On(Sample.Held([.. screws, added])).Score.Low <= Criterion.On(Sample.Held(screws)).Score.Low);
    });

    [Fact]
    public void Every_realisation_of_ranged_counts_and_open_types_lies_in_the_interval() =>
        Gen.Select(Screws, Gen.Int[0, 15].Array[6], Gen.Int[0, 3].Array[6]).Sample((screws, masks, spreads) =>
        {
            Joint[] open = [.. screws.Select((joint, i) => Opened(joint, masks[i], spreads[i]))];
            var truth = FastenerDiversityFacts.Of(Sample.Held(screws)).Effective;
            Assert.True(FastenerDiversityFacts.Of(Sample.Held(open)).Effective.Contains(truth));
            Assert.True(Criterion.On(Sample.Held(open)).Score.Contains(Criterion.On(Sample.Held(screws)).Score));
        });

    [Fact]
    public void Taking_an_observation_away_only_widens() =>
        Gen.Select(Screws, Gen.Int[0, 15].Array[6], Gen.Int[0, 15].Array[6], Gen.Int[0, 3].Array[6]).Sample((screws, first, more, spreads) =>
        {
            Joint[] open = [.. screws.Select((joint, i) => Opened(joint, first[i], spreads[i]))];
            Joint[] wider = [.. open.Select((joint, i) => Opened(joint, more[i], spreads[i]))];
            Assert.True(Criterion.On(Sample.Held(wider)).Score.Contains(Criterion.On(Sample.Held(open)).Score));
        });

    [Fact]
    public void Both_ends_for_ranged_counts_are_those_that_trying_all_counts_finds() =>
        Gen.Select(Gen.Int[1, 4], Gen.Int[0, 3]).Array[2, 3].Sample(ranges =>
        {
            Joint[] screws = [.. ranges.Select((range, i) =>
                Sample.Screw($"s-{i}", new Quantity(range.Item1, range.Item1 + range.Item2), "slot", 1.2m, 1 + i))];
            var found = FastenerDiversityFacts.Of(Sample.Held(screws)).Effective;
            decimal[] tried = [.. Counts(ranges).Select(Hill)];
            Assert.Equal(tried.Min(), found.Low);
            Assert.InRange(found.High - tried.Max(), 0m, 0.1m);
        });

    [Fact]
    public void Reasons_point_at_what_is_there() => Screws.Sample(screws =>
        Criterion.On(Sample.Held(screws)).PointsInto(Sample.Held(screws)));

    static Joint[] Numbered(Joint[] joints) => [.. joints.Select((joint, i) => joint with { Id = $"s-{i}" })];

    /// <summary>Forgets some of what was observed: a bit each for drive, diameter, length, and how far the count is spread.</summary>
    static Joint Opened(Joint joint, int mask, int spread)
    {
        var screw = joint.Screw!;
        if ((mask & 1) > 0) screw = screw with { Drive = screw.Drive.IsExact ? new(screw.Drive.Stated[0], "cross-z") : default };
        if ((mask & 2) > 0) screw = screw with { DiameterMm = default };
        if ((mask & 4) > 0) screw = screw with { LengthMm = new(screw.LengthMm.Min - 1, screw.LengthMm.Max + 1) };
        var count = (mask & 8) > 0 ? new Quantity(Math.Max(0, joint.Count.Min!.Value - spread), joint.Count.Max + spread) : joint.Count;
        return joint with { Screw = screw, Count = count };
    }

    static IEnumerable<ImmutableList<int>> Counts((int Least, int Spread)[] ranges) => ranges.Aggregate(
        (IEnumerable<ImmutableList<int>>)[[]],
        (all, range) => all.SelectMany(some => Enumerable.Range(range.Least, range.Spread + 1).Select(some.Add)));

    static decimal Hill(ImmutableList<int> counts) =>
        (decimal)counts.Sum() * counts.Sum() / counts.Sum(count => count * count);
}
