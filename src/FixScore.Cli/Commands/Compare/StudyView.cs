using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Sensitivity;
using FixScore.Analysis.Weights;
using FixScore.Analysis.Weights.Acceptability;
using FixScore.Cli.Terminal;

namespace FixScore.Cli.Commands.Compare;

/// <summary>What weights do to one ranking: shares of places, how far each weight may move, the smallest change that turns an order round.</summary>
sealed class StudyView(Canvas canvas, CultureInfo culture, ImmutableArray<string> names)
{
    const int MostPlaces = 8;

    public void Show(WeightStudy study, AcceptabilityOptions options)
    {
        canvas.Line();
        canvas.Heading($"Other weights, {study.Name}");
        var places = Enumerable.Range(1, Math.Min(MostPlaces, names.Length)).ToArray();
        canvas.Table(
            [("Share of weights for place", false), .. places.Select(place => (place.ToString(culture), true))],
            names.Select((name, unit) => (string[])[name, .. places.Select(place => Percent(study.Share(unit, place)))]));
        canvas.Line(study.Exact is not null ? "Exact." : string.Create(culture, $"{options.Draws:N0} draws, seed {options.Seed}; standard error at most {Percent(0.5 / Math.Sqrt(options.Draws), "0.0")}."));
        canvas.Table(
            [("Weight", false), ("Share", true), ("Winner stays", true), ("Order stays", true)],
            study.Stability.Select(weight => (string[])[study.Table.Criteria[weight.Criterion], Percent(weight.Share.ToDouble()), Range(weight.Winner), Range(weight.Order)]));
        Critical(study);
        foreach (var pair in study.Correlations)
            canvas.Line($"{study.Table.Criteria[pair.First]} and {study.Table.Criteria[pair.Second]} may count one thing twice: correlation {(pair.Pearson ?? pair.Spearman ?? 0).ToString("0.00", culture)} over {pair.Units.ToString(culture)} units.");
        if (study.Sensitivity is { } sensitivity) Sensitivity(sensitivity);
    }

    void Sensitivity(RankShiftSensitivity sensitivity)
    {
        if (sensitivity.Indices.Variance == 0)
        {
            canvas.Line($"No place is moved by any of these, together or alone. {SensitivityText.Ranges(sensitivity, culture)}");
            return;
        }
        canvas.Table(
            [("What moves places", false), ("Alone", true), ("With others", true)],
            sensitivity.Inputs.Zip(sensitivity.Indices.Inputs).OrderByDescending(input => input.Second.Total)
                .Select(input => (string[])[SensitivityText.Name(input.First), Percent(Math.Max(0, input.Second.First)), Percent(Math.Max(0, input.Second.Total))]));
        canvas.Line($"Shares of the variance of the average shift in rank, {sensitivity.Indices.Mean.ToString("0.00", culture)} places in the mean (Sobol indices). {SensitivityText.Ranges(sensitivity, culture)}");
    }

    void Critical(WeightStudy study)
    {
        if (study.Critical.ForTop is { } top) canvas.Line($"The winner falls first to {Change(study, top)}.");
        else canvas.Line("No change of one weight unseats the winner.");
        if (study.Critical.ForAny is { } any && any != study.Critical.ForTop) canvas.Line($"Any order turns first by {Change(study, any)}.");
    }

    string Change(WeightStudy study, CriticalChange change) =>
        $"{names[change.Pair.Behind]} over {names[change.Pair.Ahead]}: {study.Table.Criteria[change.Criterion]} {(change.Relative?.Sign > 0 ? "down" : "up")} by {Percent(Math.Abs(change.Relative?.ToDouble() ?? 0))} of its weight";

    string Range(StabilityInterval ends) => $"{Percent(ends.Low.ToDouble())} to {Percent(ends.High.ToDouble())}";

    string Percent(double share, string format = "0") => (share * 100).ToString(format, culture) + " %";
}
