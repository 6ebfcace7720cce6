using System.Collections.Immutable;

namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>What share of all weights gives a unit a place, by simulation, under the weighted arithmetic mean. More is better.</summary>
/// <remarks>
/// <para>Source: Lahdelma and Salminen, SMAA-2, Operations Research 49, 2001. In each draw weights come from the law and open
/// values uniformly from between their ends, each on its own.</para>
/// <para>Units whose scores agree as doubles share the places they take equally. A score is the sum of weight x value in the
/// order of the criteria, in doubles, so another order of the criteria can round otherwise.</para>
/// <para>The same table, law, draws and seed give the same result to the last bit, whatever the machine and its threads:
/// draws are numbered, only whole numbers are merged. Units are numbered as in the table, places from 1. Immutable and thread safe.</para>
/// </remarks>
public sealed class SimulatedAcceptability
{
    readonly PlaceTally _tally;
    readonly ImmutableArray<ImmutableArray<double>?> _central;
    readonly ImmutableArray<double?> _confidence;

    SimulatedAcceptability(UnitTable table, AcceptabilityOptions options, Simulation simulation)
    {
        (Table, Options) = (table, options);
        _tally = simulation.Places();
        _central = [.. Enumerable.Range(0, table.Units.Length).Select(unit => Mean(unit, simulation.Scale))];
        _confidence = Confidences(simulation);
    }

    /// <summary>What was ranked.</summary>
    public UnitTable Table { get; }

    /// <summary>How it was drawn.</summary>
    public AcceptabilityOptions Options { get; }

    /// <summary>Draws weights, and ranks the units under each.</summary>
    /// <param name="table">Comparable values, open ones allowed.</param>
    /// <param name="law">How likely each set of weights is.</param>
    /// <param name="options">Draws and seed; <c>null</c> for the usual ones.</param>
    /// <exception cref="ArgumentException">There is no unit or no criterion, or the law is about another number of criteria.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No draw or no thread is allowed.</exception>
    public static SimulatedAcceptability Of(UnitTable table, WeightLaw law, AcceptabilityOptions? options = null)
    {
        if (table.Units.IsEmpty || table.Criteria.IsEmpty) throw new ArgumentException("There must be a unit and a criterion.", nameof(table));
        law.Check(table.Criteria.Length);
        var how = (options ?? new()).Checked();
        return new(table.Checked(), how, new(table, law, how));
    }

    /// <summary>Share of draws in which a unit has a place; over all places 1.</summary>
    public double Share(int unit, int place)
    {
        var at = Index(unit, place - 1);
        var shared = _tally.Shared is { } all ? all[at] / ((double)PlaceTally.Whole * Options.Draws) : 0;
        return (_tally.Places.Cells[at] / (double)Options.Draws) + shared;
    }

    /// <summary>Standard error of <see cref="Share"/>: root of p (1 - p) / draws. 0 where the place was had never or always, which few draws do not prove.</summary>
    public double StandardError(int unit, int place) => Error(Share(unit, place));

    /// <summary>Mean of the weights that made a unit first, alone or with others; <c>null</c> where none did.</summary>
    public ImmutableArray<double>? Central(int unit) => _central[unit];

    /// <summary>In how many draws the unit was first, alone or with others: what <see cref="Central"/> rests on.</summary>
    public int Firsts(int unit) => _tally.Firsts[unit];

    /// <summary>Confidence factor: share of draws of the open values in which the unit's central weights make it first. 1 where all values are exact, <c>null</c> where it never was first.</summary>
    public double? Confidence(int unit) => _confidence[unit];

    /// <summary>Share of draws in which a unit is above another, ties counting half; <c>null</c> unless <see cref="AcceptabilityOptions.WithWins"/>.</summary>
    public double? Wins(int unit, int other) => _tally.Wins is not { } wins ? null
        : 0.5 + ((wins[Index(unit, other)] - wins[Index(other, unit)]) / (2.0 * Options.Draws));

    internal double Error(double share) => Math.Sqrt(Math.Max(0, share * (1 - share)) / Options.Draws);

    int Index(int unit, int column)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)unit, (uint)Table.Units.Length, nameof(unit));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)column, (uint)Table.Units.Length, nameof(column));
        return (unit * Table.Units.Length) + column;
    }

    ImmutableArray<double>? Mean(int unit, double scale)
    {
        if (_tally.Firsts[unit] == 0) return null;
        var criteria = Table.Criteria.Length;
        return [.. _tally.Weights.AsSpan(unit * criteria, criteria).ToArray().Select(sum => sum / scale / _tally.Firsts[unit])];
    }

    ImmutableArray<double?> Confidences(Simulation simulation)
    {
        if (!simulation.HasOpenValues) return [.. _tally.Firsts.Select(firsts => firsts > 0 ? 1.0 : (double?)null)];
        var central = _central.Index().Where(each => each.Item is not null).Select(each => (each.Index, each.Item!.Value.ToArray())).ToArray();
        var firsts = central.Zip(simulation.FirstsUnder(central), (each, count) => (each.Index, count)).ToDictionary(each => each.Index, each => each.count);
        return [.. _central.Select((_, unit) => firsts.TryGetValue(unit, out var count) ? count / (double)Options.Draws : (double?)null)];
    }
}
