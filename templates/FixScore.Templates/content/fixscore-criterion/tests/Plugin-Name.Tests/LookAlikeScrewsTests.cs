using System.Collections.Immutable;
using FixScore;
using FixScore.Testing;

namespace PluginNamespace.Tests;

public sealed class LookAlikeScrewsTests
{
    static readonly LookAlikeScrewsCriterion Criterion = new();
    static readonly ImmutableArray<string> Joined = ["back-cover", "frame"];

    [Fact]
    public void The_criterion_keeps_the_laws() => CriterionConformance.Check(Criterion).ThrowIfAny();

    // By hand: the first two look alike, the third is much longer, the fourth takes another driver. 2 of 4 is half of the way.
    [Fact]
    public void Look_alikes_in_half_of_the_places_cost_half_of_the_points() => Assert.Equal(50, ScoreWithFourth("hexalobular"));

    // By hand: the fourth may look like the second, so that it is 2 or 3 of 4.
    [Fact]
    public void A_drive_that_was_not_observed_widens_the_score() => Assert.Equal(new(25, 50), ScoreWithFourth(default));

    static Interval ScoreWithFourth(OneOf<string> drive)
    {
        var record = new RecordBuilder().Part("back-cover").Part("frame")
            .Screw("first", Joined, "cross", diameter: 1.6m, length: 4)
            .Screw("second", Joined, "cross", diameter: 1.4m, length: 4.5m)
            .Screw("third", Joined, "cross", diameter: 1.6m, length: 8)
            .Screw("fourth", Joined, drive, diameter: 1.6m, length: 4);
        return Criterion.Judge(Contexts.For(Criterion, record.ToCase())).Score;
    }
}
