using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Ranking;
using FixScore.Analysis.Weights;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Reports;

/// <summary>How much the order depends on the rules: profiles side by side, what turns round and why, and what other weights would do.</summary>
sealed class ComparisonSection(CultureInfo culture)
{
    const int MostReversals = 20;
    const int MostPlaces = 8;

    static readonly Scale Whole = new(0, 1);

    readonly Shown shown = new(culture);

    public IEnumerable<Section> Of(ReportInput input, ImmutableArray<IReadOnlyList<Placing>> rankings)
    {
        if (input.Comparison is not { } comparison) yield break;
        ImmutableArray<string> names = [.. comparison.Devices.Select(id => Name(input, id))];
        yield return new("How much the order depends on the rules",
        [
            .. comparison.Profiles.Length > 1 ? Profiles(comparison, names, rankings) : [],
            .. Dominance(comparison, names),
            .. input.Studies.Select(study => Study(study, names, input.Draws)),
        ])
        { Anchor = "rules" };
    }

    static string Name(ReportInput input, string id) => PlainText.Of(input.Judgements.First(each => each.Record.Id == id).Device, RecordTerms.LongestName);

    IEnumerable<Block> Profiles(ProfileComparison comparison, ImmutableArray<string> names, ImmutableArray<IReadOnlyList<Placing>> rankings)
    {
        yield return new Picture(PlacesChart.Of(comparison, names), PlacesChart.Summary(comparison, names), "Places by profile, first at the top; a mark like \u201C1 to 2\u201D is not settled.") { IsWide = true, AsTable = Places(comparison, names) };
        yield return new Grid("How far profiles agree: 1 is the same order, \u22121 the opposite one; shifts are in places",
            ["Profiles", new("Kendall tau-b", GridKind.Number), new("Spearman", GridKind.Number), new("Mean shift", GridKind.Number), new("Largest shift", GridKind.Number) { IsExtra = true }],
            [.. comparison.Pairs.Select(pair => ImmutableArray.Create<GridCell>($"{comparison.Profiles[pair.A]}, {comparison.Profiles[pair.B]}",
                Coefficient(pair.Agreement.TauB), Coefficient(pair.Agreement.Spearman), shown.Number(decimal.Round(pair.Shift.Mean, 2)), shown.Number(pair.Shift.Largest)))]);
        var reversals = comparison.Pairs.SelectMany(pair => pair.Reversals.Select(reversal => (Pair: pair, Reversal: reversal))).ToArray();
        if (reversals.Length == 0) yield return new Prose("Nothing turns round from one profile to another.");
        yield return new Items([.. reversals.Take(MostReversals).Select(each => new Item(
            $"{names[each.Reversal.First]} is above {names[each.Reversal.Second]} by {comparison.Profiles[each.Pair.A]}, below by {comparison.Profiles[each.Pair.B]}{(each.Reversal.Cause is { } cause ? $", mostly for {cause.Criterion}" : "")}{(each.Reversal.IsCertain ? "" : ", unless open observations decide otherwise")}.")
            { Label = "Turns round" })]);
        if (reversals.Length > MostReversals) yield return new Prose($"And {shown.Number(reversals.Length - MostReversals)} more; fixscore compare tells all.", Tone.Quiet);
    }

    Grid Places(ProfileComparison comparison, ImmutableArray<string> names) => new("Places by profile",
        ["Device", .. comparison.Profiles.Select(profile => new GridColumn(profile, GridKind.Number))],
        [.. names.Select((name, device) => (ImmutableArray<GridCell>)[name, .. comparison.Ranks[device].Select(rank => (GridCell)Place(rank))])]);

    string Place(Rank rank) => rank.Best == rank.Worst ? rank.Best.ToString(culture) : $"{rank.Best.ToString(culture)} to {rank.Worst.ToString(culture)}";

    IEnumerable<Block> Dominance(ProfileComparison comparison, ImmutableArray<string> names)
    {
        yield return new Items([.. comparison.Dominance.Pairs.Take(MostReversals).Select(pair => new Item($"{names[pair.Over]} is never below {names[pair.Under]}.") { Label = "Under any weights" })]);
        if (comparison.Dominance.Pairs.IsEmpty) yield return new Prose("No order holds for every pair of weights: weights decide.");
    }

    Section Study(WeightStudy study, ImmutableArray<string> names, DrawsMade? draws) => new($"Other weights, {study.Name}",
    [
        Acceptability(study, names),
        new Prose(study.Exact is not null || draws is null ? "Exact." : $"{shown.Number(draws.Count)} draws, seed {shown.Number(draws.Seed)}; caps by gates are left aside.", Tone.Quiet),
        new Grid("How far a weight may move, the others keeping their proportions, before another device wins; the tick is the weight given",
            ["Weight of", new("", GridKind.Span), new("Given", GridKind.Number), new("Winner stays", GridKind.Number), new("Whole order stays", GridKind.Number) { IsExtra = true }],
            [.. study.Stability.Select(weight => Stability(study, weight))]),
        new Items([.. Critical(study, names).Select(text => new Item(text))]),
    ]);

    Grid Acceptability(WeightStudy study, ImmutableArray<string> names)
    {
        int[] places = [.. Enumerable.Range(1, Math.Min(MostPlaces, names.Length))];
        return new("Share of sensible weights that give a place", ["Device", .. places.Select(place => new GridColumn(place.ToString(culture), GridKind.Number))],
            [.. names.Select((name, unit) => (ImmutableArray<GridCell>)[name, .. places.Select(place => (GridCell)Percent(study.Share(unit, place)))])]);
    }

    ImmutableArray<GridCell> Stability(WeightStudy study, WeightStability weight) =>
    [
        study.Table.Criteria[weight.Criterion],
        new("") { Extent = new(new(Part(weight.Winner.Low), Part(weight.Winner.High)), Whole, Part(weight.Share)) },
        Percent(weight.Share.ToDouble()), Range(weight.Winner), Range(weight.Order),
    ];

    IEnumerable<string> Critical(WeightStudy study, ImmutableArray<string> names)
    {
        yield return study.Critical.ForTop is { } top ? $"The winner falls first to {Change(study, names, top)}." : "No change of one weight unseats the winner.";
        if (study.Critical.ForAny is { } any && any != study.Critical.ForTop) yield return $"Any order turns first by {Change(study, names, any)}.";
    }

    string Change(WeightStudy study, ImmutableArray<string> names, CriticalChange change) =>
        $"{names[change.Pair.Behind]} over {names[change.Pair.Ahead]}: {study.Table.Criteria[change.Criterion]} {(change.Relative?.Sign > 0 ? "down" : "up")} by {Percent(Math.Abs(change.Relative?.ToDouble() ?? 0))} of its weight";

    static decimal Part(Fraction share) => decimal.Round((decimal)share.ToDouble(), 6);

    string Range(StabilityInterval ends) => $"{Percent(ends.Low.ToDouble())} to {Percent(ends.High.ToDouble())}";

    string Percent(double share) => (share * 100).ToString("0", culture) + " %";

    string Coefficient(double? value) => value is { } known ? known.ToString("0.000", culture) : "none";
}
