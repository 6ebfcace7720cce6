using System.Collections.Immutable;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Tests.Comparing;

/// <summary>Devices under several profiles. Counted by hand, no source.</summary>
public sealed class ProfileComparisonTests
{
    static readonly ImmutableArray<RecordDocument> Devices = [Bench.Document("slate", 90, 20), Bench.Document("pane", 30, 60), Bench.Document("plinth", 30, 10)];

    static readonly ImmutableArray<Profile> Profiles = [Bench.Profile("owner", 3, 1), Bench.Profile("workshop", 1, 3)];

    [Fact]
    public void Scores_and_ranks_stand_by_device_and_profile()
    {
        var comparison = ProfileComparison.Of(Devices, Profiles);
        Support.Equal(["slate", "pane", "plinth"], comparison.Devices);
        Support.Equal(["owner", "workshop"], comparison.Profiles);
        Assert.Equal([[72.5m, 37.5m], [37.5m, 52.5m], [25m, 15m]], comparison.Scores.Select(row => row.Select(score => score.Low).ToArray()));
        Assert.Equal([[new(1, 1), new(2, 2)], [new(2, 2), new(1, 1)], [new(3, 3), new(3, 3)]], comparison.Ranks.Select(row => row.ToArray()));
    }

    [Fact]
    public void A_pair_of_profiles_names_what_turns_round_and_why()
    {
        var pair = Assert.Single(ProfileComparison.Of(Devices, Profiles).Pairs);
        Support.Near(1 / 3d, pair.Agreement.TauB);
        Support.Near(0.5, pair.Agreement.Spearman);
        Assert.Equal(1m, pair.Shift.Largest);
        Assert.True(pair.HasExactCauses);
        // Slate leads pane by 35 points, then lags by 15: of these 50, t.a takes 60 x (3/4 - 1/4) = 30.
        Assert.Equal(new Reversal(0, 1, true, new("t.a", 0.3m, 0.5m)), Assert.Single(pair.Reversals));
    }

    [Fact]
    public void Profiles_on_other_scales_compare_by_shares_of_their_scales()
    {
        ImmutableArray<RecordDocument> devices = [Bench.Document("slate", 9, 2), Bench.Document("pane", 3, 6)];
        var pair = Assert.Single(ProfileComparison.Of(devices, [Bench.Profile("ten", 3, 1, max: 10), Bench.Profile("hundred", 1, 3)]).Pairs);
        Assert.Equal(new ReversalCause("t.a", 0.435m, 0.365m), Assert.Single(pair.Reversals).Cause);
    }

    [Fact]
    public void Dominance_holds_under_all_profiles() =>
        Support.Equal([new DominancePair(0, 2), new(1, 2)], ProfileComparison.Of(Devices, Profiles).Dominance.Pairs);

    [Fact]
    public void An_unknown_observation_opens_places_and_dominance()
    {
        var comparison = ProfileComparison.Of([Bench.Document("slate", 90, null), Bench.Document("pane", 30, 60)], [Bench.Profile("even", 1, 1)]);
        Assert.Equal(new Interval(45, 95), comparison.Scores[0][0]);
        Assert.Equal((new Rank(1, 2), new Rank(1, 2)), (comparison.Ranks[0][0], comparison.Ranks[1][0]));
        Assert.Empty(comparison.Dominance.Pairs);
        Support.Equal([new DominancePair(0, 1)], comparison.Dominance.Possible);
    }

    [Fact]
    public void Causes_in_a_profile_that_does_not_add_up_are_marked_as_near()
    {
        var pair = Assert.Single(ProfileComparison.Of(Devices, [Profiles[0], Bench.Profile("lowest", 1, 1, "minimum")]).Pairs);
        Assert.False(pair.HasExactCauses);
        Assert.Equal("t.a", Assert.Single(pair.Reversals).Cause?.Criterion);
    }

    [Fact]
    public void A_cap_can_be_the_cause()
    {
        var capped = Bench.Profile("capped", 3, 1, more: """, "gates": [{ "id": "low", "when": { "node": "second", "below": 30 }, "cap": 5, "reason": "planted" }] """);
        var pair = Assert.Single(ProfileComparison.Of([Devices[0], Devices[1]], [Profiles[0], capped]).Pairs);
        Assert.Equal(new ReversalCause(ProfileComparison.Gates, 0.675m, 0.675m), Assert.Single(pair.Reversals).Cause);
    }

    [Fact]
    public void Two_versions_of_a_profile_are_told_apart()
    {
        var next = Profiles[0] with { Version = "2.0.0" };
        Support.Equal(["owner@1.0.0", "owner@2.0.0"], ProfileComparison.Of(Devices, [Profiles[0], next]).Profiles);
    }

    [Fact]
    public void What_does_not_fit_together_is_refused()
    {
        var scores = ProfileScores.Of(Devices, Profiles[0]);
        Assert.Throws<ArgumentException>(() => ProfileComparison.Of([]));
        Assert.Throws<ArgumentException>(() => ProfileComparison.Of([scores, ProfileScores.Of([Devices[0]], Profiles[1])]));
        Assert.Throws<ArgumentException>(() => ProfileComparison.Of([scores with { Profile = Profiles[1] }]));
        Assert.Throws<ArgumentException>(() => ProfileComparison.Of([Devices[0], Devices[0]], Profiles));
    }
}
