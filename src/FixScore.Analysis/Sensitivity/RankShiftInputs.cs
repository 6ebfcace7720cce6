using System.Collections.Immutable;

namespace FixScore.Analysis.Sensitivity;

/// <summary>A choice that the maker of an index has, each way as likely: how values are made comparable, what is left out.</summary>
/// <param name="Name">What is chosen.</param>
/// <param name="Ways">At least one; each makes another table of the same units and criteria.</param>
public sealed record TableChoice(string Name, ImmutableArray<Func<UnitTable, UnitTable>> Ways);

/// <summary>What is uncertain about a ranking, each on its own. Immutable and thread safe.</summary>
/// <param name="Weights">For each criterion the range of its relative weight, 0 or more, drawn uniformly; an exact one is certain.</param>
/// <param name="Rules">Rules of aggregation, each as likely, such as those of <see cref="ScoreRules"/>; at least one.</param>
/// <param name="Choices">Further choices, made in this order.</param>
public sealed record RankShiftInputs(ImmutableArray<Interval> Weights, ImmutableArray<ScoreRule> Rules, ImmutableArray<TableChoice> Choices)
{
    /// <summary>The four rules of <see cref="ScoreRules"/> that make points of the values of one unit.</summary>
    public static ImmutableArray<ScoreRule> UsualRules { get; } = [ScoreRules.Arithmetic, ScoreRules.Geometric, ScoreRules.Harmonic, ScoreRules.Minimum];

    /// <summary>Further rules that look at all units at once, such as <see cref="ScoreRules.Copeland"/>; each as likely as one of <see cref="Rules"/>.</summary>
    public ImmutableArray<TableRule> TableRules { get; init; } = [];

    /// <summary>How many inputs there are: weights, rule, further choices.</summary>
    public int Count => Weights.Length + 1 + Choices.Length;

    /// <exception cref="ArgumentException">Something does not fit.</exception>
    internal void Check(UnitTable table)
    {
        if (table.Units.IsEmpty || table.Criteria.IsEmpty) throw new ArgumentException("There must be a unit and a criterion.", nameof(table));
        if (Weights.Length != table.Criteria.Length) throw new ArgumentException("Each criterion needs a weight.");
        if (Weights.Any(weight => weight.Low < 0m)) throw new ArgumentException("A weight can be below 0.");
        if (Rules.IsEmpty && TableRules.IsEmpty || Choices.Any(choice => choice.Ways.IsEmpty)) throw new ArgumentException("A choice needs a way.");
    }
}
