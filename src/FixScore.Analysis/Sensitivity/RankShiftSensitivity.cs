using System.Collections.Immutable;

namespace FixScore.Analysis.Sensitivity;

/// <summary>What makes ranks differ from a reference ranking: shares of the variance of the average shift in rank.</summary>
/// <remarks>
/// Source: Saisana, Saltelli and Tarantola, Uncertainty and sensitivity analysis techniques as tools for the quality
/// assessment of composite indicators, J. R. Statist. Soc. A 168, 2005. The output is the mean over units of the distance
/// between both ranks; level units have the middle rank. Of an open value its middle is taken. Immutable and thread safe.
/// </remarks>
/// <param name="Inputs">The inputs: the criteria whose weights they are, then "rule", then the choices.</param>
/// <param name="Indices">Mean and variance of the shift, and an index for each input.</param>
public sealed record RankShiftSensitivity(ImmutableArray<RankShiftInput> Inputs, SobolIndices Indices)
{
    const int MostTables = 4096;

    /// <summary>How often each record was scored to try its choices; 0 for a table.</summary>
    public int RunsPerRecord { get; init; }

    /// <summary>How the points of bands and levels were varied; <c>null</c> where they were not.</summary>
    public BandVariation? Bands { get; init; }

    /// <summary>Estimates the indices.</summary>
    /// <param name="table">Comparable values before the choices are made.</param>
    /// <param name="reference">A rank for each unit, such as <see cref="Ranking.Ranks.Middles"/>.</param>
    /// <param name="uncertain">What is uncertain.</param>
    /// <param name="options">Samples and seed; <c>null</c> for the usual ones.</param>
    /// <exception cref="ArgumentException">Weights or ranks do not fit the table, a way made another kind of table, or there are more than 4096 ways through the choices.</exception>
    public static RankShiftSensitivity Of(UnitTable table, ImmutableArray<decimal> reference, RankShiftInputs uncertain, SobolOptions? options = null)
    {
        uncertain.Check(table.Checked());
        if (reference.Length != table.Units.Length) throw new ArgumentException("Each unit needs a reference rank.", nameof(reference));
        var model = new RankShiftModel(Tables(table, uncertain), [.. reference.Select(rank => (double)rank)], uncertain);
        return new(
            [.. OfWeightsAndRule(table.Criteria, uncertain), .. uncertain.Choices.Select(choice => new RankShiftInput(choice.Name, InputKind.Table, choice.Ways.Length))],
            SobolIndices.Of(model.Shift, uncertain.Count, options));
    }

    internal static IEnumerable<RankShiftInput> OfWeightsAndRule(IEnumerable<string> criteria, RankShiftInputs uncertain) =>
        criteria.Select(criterion => new RankShiftInput(criterion, InputKind.Weight, 0)).Append(new("rule", InputKind.Rule, uncertain.Rules.Length + uncertain.TableRules.Length));

    // The last choice varies fastest.
    static UnitTable[] Tables(UnitTable table, RankShiftInputs uncertain)
    {
        UnitTable[] tables = [table];
        foreach (var choice in uncertain.Choices)
        {
            if ((long)tables.Length * choice.Ways.Length > MostTables) throw new ArgumentException("There are too many ways through the choices.", nameof(uncertain));
            tables = [.. tables.SelectMany(_ => choice.Ways, (before, way) => Same(table, way(before)))];
        }
        return tables;
    }

    static UnitTable Same(UnitTable table, UnitTable made) =>
        made.Checked().Units.Length == table.Units.Length && made.Criteria.Length == table.Criteria.Length ? made : throw new ArgumentException("A way must keep units and criteria.");
}
