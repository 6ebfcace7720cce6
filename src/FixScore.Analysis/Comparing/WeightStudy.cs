using System.Collections.Immutable;
using FixScore.Analysis.Aggregating;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Ranking;
using FixScore.Analysis.Sensitivity;
using FixScore.Analysis.Weights;
using FixScore.Analysis.Weights.Acceptability;

namespace FixScore.Analysis.Comparing;

/// <summary>How much a ranking depends on the weights of one set of rules that takes the weighted arithmetic mean.</summary>
/// <remarks>
/// <para>For a profile, criteria are the lines directly below the total, each as a share of its scale; weights below them and
/// gates stay as they are, and caps by gates are left out. A line that was left out of a score counts as open.</para>
/// <para>Intervals of stability and critical changes are exact; open values enter them with their middles. Immutable and thread safe.</para>
/// </remarks>
/// <param name="Name">Name of the rules.</param>
/// <param name="Table">Units and criteria, the most important one first.</param>
/// <param name="Weights">Weights, in the order of the table.</param>
/// <param name="Simulated">Places under other weights, simulated; open values are drawn from between their ends.</param>
/// <param name="Exact">The same exactly, for up to 3 criteria with exact values and without a centre; else <c>null</c>.</param>
/// <param name="Stability">How far each weight may move.</param>
/// <param name="Critical">The smallest change of one weight that turns an order round.</param>
/// <param name="Correlations">Pairs of criteria that may count one thing twice: correlated as much as <see cref="CriterionCorrelation.UsualThreshold"/> over 8 units or more.</param>
/// <param name="Sensitivity">What moves places from those given: each weight, from none to twice its share, or the rule (arithmetic, geometric, harmonic, minimum, Copeland's); with records also the other choices of <see cref="ProfileRankShift"/>.</param>
public sealed record WeightStudy(
    string Name, UnitTable Table, ImmutableArray<decimal> Weights, SimulatedAcceptability Simulated, ExactAcceptability? Exact,
    ImmutableArray<WeightStability> Stability, CriticalChanges Critical, ImmutableArray<CriterionCorrelation> Correlations, RankShiftSensitivity? Sensitivity)
{
    /// <summary>Sum of the Dirichlet parameters of <see cref="WeightSpread.Centred"/>: a share of 1/4 then varies by about 0.06 (own choice, no source).</summary>
    public const decimal Concentration = 50;

    // Among fewer units high correlations are common by chance (own choice, no source).
    const int FewestUnits = 8;
    const int SobolSamples = 2_048;
    const int MostExactCriteria = 3;
    const int MostExactUnits = 30;

    /// <summary>Share of the weights that give a unit a place, 0 to 1; exact where it can be.</summary>
    /// <param name="unit">Number of the unit.</param>
    /// <param name="place">The place, from 1.</param>
    public double Share(int unit, int place) => Exact is { } exact ? exact.Shares[unit][place - 1].ToDouble() : Simulated.Share(unit, place);

    /// <summary>Standard error of <see cref="Share"/>; 0 where it is exact.</summary>
    /// <param name="unit">Number of the unit.</param>
    /// <param name="place">The place, from 1.</param>
    public double StandardError(int unit, int place) => Exact is null ? Simulated.StandardError(unit, place) : 0;

    /// <summary>Studies a profile; <c>null</c> when its total is no weighted arithmetic mean of several lines.</summary>
    /// <param name="scores">The scores by this profile.</param>
    /// <param name="name">Name of the rules.</param>
    /// <param name="spread">Which weights are sensible.</param>
    /// <param name="options">Draws and seed.</param>
    public static WeightStudy? Of(ProfileScores scores, string name, WeightSpread spread, AcceptabilityOptions options) =>
        TopLines.Of(scores) is { } lines ? Of(name, lines.Table, lines.Weights, spread, options) : null;

    /// <summary>Studies a profile with the other choices of its maker; <c>null</c> as above.</summary>
    /// <param name="scores">The scores by this profile.</param>
    /// <param name="records">The records scored, in the same order.</param>
    /// <param name="name">Name of the rules.</param>
    /// <param name="spread">Which weights are sensible.</param>
    /// <param name="options">Draws and seed.</param>
    /// <param name="cancellation">Cancels the run.</param>
    public static WeightStudy? Of(
        ProfileScores scores, ImmutableArray<RecordDocument> records, string name, WeightSpread spread, AcceptabilityOptions options, CancellationToken cancellation = default) =>
        Of(scores, name, spread, options) is { } study
            ? study with { Sensitivity = ProfileRankShift.Of(records, scores.Profile, null, Sampling(options), cancellation) }
            : null;

    /// <summary>Studies a table.</summary>
    /// <param name="name">Name of the rules.</param>
    /// <param name="table">Comparable values, more is better.</param>
    /// <param name="weights">Relative weights; criteria of weight 0 are left out.</param>
    /// <param name="spread">Which weights are sensible.</param>
    /// <param name="options">Draws and seed.</param>
    /// <exception cref="ArgumentException">Table and weights do not fit.</exception>
    public static WeightStudy Of(string name, UnitTable table, ImmutableArray<decimal> weights, WeightSpread spread, AcceptabilityOptions options)
    {
        int[] order = [.. Enumerable.Range(0, weights.Length).Where(i => weights[i] > 0m).OrderByDescending(i => weights[i])];
        var sorted = table with { Criteria = [.. order.Select(i => table.Criteria[i])], Rows = [.. table.Rows.Select(row => order.Select(i => row[i]).ToImmutableArray())] };
        ImmutableArray<decimal> sortedWeights = [.. order.Select(i => weights[i])];
        var law = spread switch { WeightSpread.Uniform => WeightLaw.Uniform, WeightSpread.Ordered => WeightLaw.Ordered, _ => WeightLaw.Around(sortedWeights, Concentration) };
        var middles = sorted with { Rows = [.. sorted.Rows.Select(row => row.Select(value => (Interval)value.Middle()).ToImmutableArray())] };
        var canBeExact = order.Length <= MostExactCriteria && table.Units.Length <= MostExactUnits && spread != WeightSpread.Centred && sorted.IsExact();
        return new(name, sorted, sortedWeights, SimulatedAcceptability.Of(sorted, law, options), canBeExact ? ExactAcceptability.Of(sorted, law) : null,
            WeightStability.Of(middles, sortedWeights), CriticalChanges.Of(middles, sortedWeights),
            [.. CriterionCorrelation.Of(middles).Where(pair => pair.IsDoubleCounting && pair.Units >= FewestUnits)], SensitivityOf(middles, sortedWeights, options));
    }

    // Means other than the arithmetic one ask for values of 0 or more; below two units nothing moves.
    static RankShiftSensitivity? SensitivityOf(UnitTable middles, ImmutableArray<decimal> weights, AcceptabilityOptions options)
    {
        if (middles.Units.Length < 2 || middles.Rows.Any(row => row.Any(value => value.Low < 0m))) return null;
        var given = Ranks.Middles(Aggregation.Scores(middles, weights, Aggregate.WeightedArithmetic).Select(score => score.Low));
        RankShiftInputs uncertain = new([.. weights.Select(weight => new Interval(0m, 2 * weight))], RankShiftInputs.UsualRules, []) { TableRules = [ScoreRules.Copeland] };
        return RankShiftSensitivity.Of(middles, given, uncertain, Sampling(options));
    }

    static SobolOptions Sampling(AcceptabilityOptions options) => new(SobolSamples, options.Seed) { Threads = options.Threads ?? Environment.ProcessorCount };
}
