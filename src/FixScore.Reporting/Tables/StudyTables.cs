using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Weights;

namespace FixScore.Reporting.Tables;

/// <summary>What weights do to a ranking, as tables. Stateless, so safe to use from any thread.</summary>
public static class StudyTables
{
    /// <summary>Acceptability of places, stability of weights and, where it was studied, what moves places; none without a study.</summary>
    /// <param name="studies">A study for each set of rules that weighs.</param>
    public static ImmutableArray<ResultTable> Of(ImmutableArray<WeightStudy> studies) => studies.IsEmpty ? [] :
        [Acceptability(studies), Stability(studies), .. studies.Any(study => study.Sensitivity is not null) ? [Sensitivity(studies)] : (ResultTable[])[]];

    static ResultTable Acceptability(ImmutableArray<WeightStudy> studies) => new("acceptability", "Share of weights that give a place",
        [
            new("profile", ColumnKind.Text, "profile or rule"),
            new("device", ColumnKind.Text, "id of the device or unit"),
            new("place", ColumnKind.Count, "the place, 1 is first"),
            new("share", ColumnKind.Number, "share of the weights, 0 to 1, six decimals"),
            new("standardError", ColumnKind.Number, "standard error of a simulated share, six decimals; 0 where it is exact"),
        ],
        [.. from study in studies
            from unit in Enumerable.Range(0, study.Table.Units.Length)
            from place in Enumerable.Range(1, study.Table.Units.Length)
            select ImmutableArray.Create<Cell>(study.Name, study.Table.Units[unit], place, Six(study.Share(unit, place)), Six(study.StandardError(unit, place)))]);

    static ResultTable Stability(ImmutableArray<WeightStudy> studies) => new("stability", "How far a weight may move",
        [
            new("profile", ColumnKind.Text, "profile or rule"),
            new("criterion", ColumnKind.Text, "whose weight moves; the others keep their proportions"),
            new("share", ColumnKind.Number, "its share of all weights, six decimals"),
            new("winnerLow", ColumnKind.Number, "least share at which the winner stays"),
            new("winnerHigh", ColumnKind.Number, "greatest share at which the winner stays"),
            new("orderLow", ColumnKind.Number, "least share at which the whole order stays"),
            new("orderHigh", ColumnKind.Number, "greatest share at which the whole order stays"),
        ],
        [.. from study in studies
            from weight in study.Stability
            select ImmutableArray.Create<Cell>(study.Name, study.Table.Criteria[weight.Criterion], Six(weight.Share),
                Six(weight.Winner.Low), Six(weight.Winner.High), Six(weight.Order.Low), Six(weight.Order.High))]);

    static ResultTable Sensitivity(ImmutableArray<WeightStudy> studies) => new("sensitivity", "What moves places: Sobol indices of the average shift in rank",
        [
            new("profile", ColumnKind.Text, "profile or rule"),
            new("input", ColumnKind.Text, "the uncertain input; for a weight its criterion"),
            new("kind", ColumnKind.Text, "weight, rule, bands, gates, unknown or readings"),
            new("ways", ColumnKind.Count, "how many ways it has, each as likely; 0 where it is drawn from a range"),
            new("first", ColumnKind.Number, "first-order index: share of the variance, alone, six decimals"),
            new("firstError", ColumnKind.Number, "its standard error, six decimals"),
            new("total", ColumnKind.Number, "total index: share of the variance, with others, six decimals"),
            new("totalError", ColumnKind.Number, "its standard error, six decimals"),
        ],
        [.. from study in studies
            where study.Sensitivity is not null
            from input in study.Sensitivity!.Inputs.Zip(study.Sensitivity.Indices.Inputs)
            select ImmutableArray.Create<Cell>(study.Name, input.First.Name, Word.Of(input.First.Kind), input.First.Ways,
                Six(input.Second.First), Six(input.Second.FirstError), Six(input.Second.Total), Six(input.Second.TotalError))]);

    static decimal Six(Fraction value) => Six(value.ToDouble());

    static decimal Six(double value) => decimal.Round((decimal)value, 6);
}
