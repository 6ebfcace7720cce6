using System.Collections.Immutable;
using FixScore.Analysis.Chance;
using FixScore.Numbers;
using FixScore.Scoring;

namespace FixScore.Analysis.Uncertainty;

/// <summary>How far a score can be off: the exact interval, and how its inside is filled if open values are drawn evenly.</summary>
/// <remarks>
/// <para>The interval of the score is proven; the simulation is not: it draws every open line of the score uniformly from between
/// its ends, apart from the others, which is a guess about what was not observed (common practice, no source). Totals are made
/// by the kernel, gates and all, in exact decimals. The same record, profile, draws and seed give the same result everywhere.</para>
/// <para>Immutable and thread safe.</para>
/// </remarks>
public sealed class ScoreUncertainty
{
    readonly ImmutableArray<decimal> sorted;

    ScoreUncertainty(Interval total, ImmutableArray<decimal> sorted, ImmutableArray<ClassShare> classes, ImmutableArray<OpenLine> open, Interval readings) =>
        (Total, this.sorted, Classes, Open, Readings) = (total, sorted, classes, open, readings);

    /// <summary>The exact total.</summary>
    public Interval Total { get; }

    /// <summary>Classes that some draw fell in, highest first, with their shares; empty when the profile has none.</summary>
    public ImmutableArray<ClassShare> Classes { get; }

    /// <summary>Open lines, the one worth most first.</summary>
    public ImmutableArray<OpenLine> Open { get; }

    /// <summary>The lowest and the highest end that the total has under any one other reading of what the source leaves silent, the reading taken included.</summary>
    public Interval Readings { get; }

    /// <summary>Mean of the draws.</summary>
    public decimal Mean => (sorted.Aggregate((Rational)0m, (sum, total) => sum + total) / sorted.Length).ToDecimal();

    /// <summary>The smallest drawn total that at least a share of the draws do not exceed.</summary>
    /// <param name="share">Above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 to 1.</exception>
    public decimal Quantile(decimal share) => share is > 0 and <= 1
        ? sorted[(int)decimal.Ceiling(share * sorted.Length) - 1]
        : throw new ArgumentOutOfRangeException(nameof(share), share, "Above 0 to 1.");

    /// <summary>Simulates.</summary>
    /// <param name="document">The record.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="draws">How many totals are drawn, 1 at least.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="ArgumentOutOfRangeException">No draw is asked for.</exception>
    /// <inheritdoc cref="Scorer.Score" path="/exception"/>
    public static ScoreUncertainty Of(RecordDocument document, Profile profile, int draws = 2_000, long seed = 1, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var score = Scorer.Score(document, profile, cancellation: cancellation);
        var tree = new ScoreTree(document, profile, cancellation);
        var drawn = Drawn(tree, draws, seed, cancellation);
        return new(
            score.Total, [.. drawn.Select(each => each.Total).Order()], Shares(profile, drawn), [.. Lines(tree).OrderByDescending(line => line.Gain)],
            Interval.HullOf(score.Readings.SelectMany(reading => reading.Otherwise).Select(other => other.Total).Append(score.Total))!.Value);
    }

    static (decimal Total, string? Label)[] Drawn(ScoreTree tree, int draws, long seed, CancellationToken cancellation)
    {
        var (random, values, drawn) = (RandomCounter.Of(seed, 0), new Interval[tree.Ends.Length], new (decimal, string?)[draws]);
        for (var draw = 0; draw < draws; draw++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (var i = 0; i < values.Length; i++) values[i] = Within(tree, i, random.Unit(((long)draw * values.Length) + i));
            var result = tree.With(values);
            drawn[draw] = (result.Total.Low, result.Class?.Low);
        }
        tree.With(tree.Ends);
        return drawn;
    }

    // Values keep 24 digits, as those of criteria do.
    static decimal Within(ScoreTree tree, int open, double unit)
    {
        var (ends, row) = (tree.Ends[open], tree.Open[open]);
        var value = Rounding.ToSignificant(ends.Low + ((ends.High - ends.Low) * (decimal)unit));
        return row is { Rule: RowRule.Given, Role: null, Node.Carry: { } carry } ? Rounding.To(value, carry.Decimals, carry.Rounding) : value;
    }

    static ImmutableArray<ClassShare> Shares(Profile profile, (decimal Total, string? Label)[] drawn) =>
        [.. profile.Classes.Select(each => new ClassShare(each.Label, (decimal)drawn.Count(draw => draw.Label == each.Label) / drawn.Length)).Where(each => each.Share > 0m)];

    static IEnumerable<OpenLine> Lines(ScoreTree tree)
    {
        for (var i = 0; i < tree.Open.Length; i++)
        {
            var (low, high) = (With(tree, i, tree.Ends[i].Low), With(tree, i, tree.Ends[i].High));
            var whole = tree.Total.Total.High - tree.Total.Total.Low;
            yield return new(tree.Open[i].Path, tree.Open[i].Title, tree.Open[i].Missing, low, high, Math.Max(0m, whole - Math.Max(low.High - low.Low, high.High - high.Low)));
        }
    }

    static Interval With(ScoreTree tree, int open, decimal value)
    {
        Interval[] values = [.. tree.Ends];
        values[open] = value;
        var total = tree.With(values).Total;
        tree.With(tree.Ends);
        return total;
    }
}
