using System.Collections.Immutable;
using CsCheck;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Tests.Ranking;

/// <summary>Ranks of scores. Sharing the places taken is common practice, no source.</summary>
public sealed class RankTests
{
    static readonly Gen<ImmutableArray<Interval>> Scores = Gen.Select(Gen.Int[0, 12], Gen.Int[0, 5]).Select(each => new Interval(each.Item1, each.Item1 + each.Item2)).Array[1, 7]
        .Select(scores => scores.ToImmutableArray());

    [Fact]
    public void Units_that_are_level_share_the_places_they_take()
    {
        Support.Equal([new Rank(2, 3), new Rank(1, 1), new Rank(2, 3), new Rank(4, 4)], Ranks.OfExact([5, 9, 5.0m, 1]));
        Support.Equal([2.5m, 1m, 2.5m, 4m], Ranks.Middles([5, 9, 5, 1]));
    }

    [Fact]
    public void A_difference_in_the_last_digit_decides() =>
        Support.Equal([new Rank(2, 2), new Rank(1, 1)], Ranks.OfExact([0.9999999999999999999999998m, 0.9999999999999999999999999m]));

    [Fact]
    public void Scores_that_overlap_leave_the_places_open() =>
        Support.Equal([new Rank(1, 2), new Rank(1, 3), new Rank(2, 3), new Rank(4, 4)], Ranks.Of([new Interval(5, 8), new Interval(4, 9), new Interval(3, 4.5m), 1m]));

    [Fact]
    public void Every_unit_can_have_its_best_and_its_worst_place_and_none_beyond() => Scores.Sample(scores =>
    {
        var ranks = Ranks.Of(scores);
        for (var unit = 0; unit < scores.Length; unit++)
        {
            var low = Ranks.OfExact(scores.Select((score, other) => other == unit ? score.Low : score.High))[unit];
            var high = Ranks.OfExact(scores.Select((score, other) => other == unit ? score.High : score.Low))[unit];
            Assert.Equal((high.Best, low.Worst), (ranks[unit].Best, ranks[unit].Worst));
        }
    });

    [Fact]
    public void Ranks_do_not_ask_who_comes_first() => Scores.Sample(scores =>
        Assert.Equal(Ranks.Of(scores).Reverse(), Ranks.Of([.. scores.Reverse()])));

    [Fact]
    public void Exact_places_add_up_to_those_there_are() => Scores.Sample(scores =>
        Assert.Equal(scores.Length * (scores.Length + 1) / 2m, Ranks.Middles(scores.Select(score => score.Low)).Sum()));
}
