using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Ranking;
using FixScore.Analysis.Weights.Acceptability;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Compare;

/// <summary>A comparison for people: ranks side by side, how far the columns agree, what turns round and why, what holds under any weights.</summary>
sealed class CompareView(Canvas canvas, CultureInfo culture)
{
    const int MostReversals = 20;

    readonly Shown shown = new(culture);

    public void Show(Compared compared, AcceptabilityOptions options)
    {
        Places(compared);
        Agreement(compared);
        Reversals(compared);
        Dominance(compared);
        new SpreadView(canvas, culture).Show(compared);
        foreach (var study in compared.Studies) new StudyView(canvas, culture, compared.Names).Show(study, options);
    }

    void Places(Compared compared)
    {
        var result = compared.Result;
        canvas.Heading($"Places and scores by {compared.What}");
        foreach (var (index, profile) in result.Profiles.Index()) canvas.Item(1, Letter(index), profile);
        Grid(compared, "Place", (device, profile) => Place(result.Ranks[device][profile]));
        if (result.Ranks.Any(row => row.Any(rank => rank.Best < rank.Worst)))
            canvas.Line("A place like 1 to 2 is not settled: scores are level, or overlap until more is known.");
        Grid(compared, "Score", (device, profile) => Rounded(result.Scores[device][profile]));
    }

    void Grid(Compared compared, string what, Func<int, int, string> cell) => canvas.Table(
        [(what, false), .. compared.Result.Profiles.Select((_, index) => (Letter(index), true))],
        compared.Names.Select((name, device) => (string[])[name, .. compared.Result.Profiles.Select((_, profile) => cell(device, profile))]));

    // Letters as in a legend: a to z, then a2 and so on.
    string Letter(int index) => (char)('a' + (index % 26)) + (index < 26 ? "" : ((index / 26) + 1).ToString(culture));

    string Place(Rank rank) => rank.Best == rank.Worst ? rank.Best.ToString(culture) : $"{rank.Best.ToString(culture)} to {rank.Worst.ToString(culture)}";

    string Rounded(Interval score) => shown.Points(new Interval(decimal.Round(score.Low, 2), decimal.Round(score.High, 2)));

    void Agreement(Compared compared)
    {
        var result = compared.Result;
        if (result.Pairs.IsEmpty) return;
        canvas.Heading("How far they agree");
        canvas.Table(
            [("One", false), ("Other", false), ("Kendall tau-b", true), ("Spearman", true), ("Mean shift", true), ("Largest", true)],
            result.Pairs.Select(pair => (string[])
            [
                Letter(pair.A), Letter(pair.B), Coefficient(pair.Agreement.TauB), Coefficient(pair.Agreement.Spearman),
                shown.Number(decimal.Round(pair.Shift.Mean, 2)), shown.Number(pair.Shift.Largest),
            ]));
        canvas.Line("1 is the same order, -1 the opposite one; shifts are in places, on the middles of places.");
        if (result.Profiles.Length > 2) canvas.Line($"All at once: Kendall's W {Coefficient(result.Concordance.W)}, from 0, no agreement, to 1.");
    }

    string Coefficient(double? value) => value is { } known ? known.ToString("0.000", culture) : "none";

    void Reversals(Compared compared)
    {
        var result = compared.Result;
        var all = result.Pairs.SelectMany(pair => pair.Reversals.Select(reversal => (Pair: pair, Reversal: reversal))).ToArray();
        canvas.Line();
        canvas.Heading(all.Length == 0 ? "Nothing turns round" : "What turns round");
        foreach (var (pair, reversal) in all.Take(MostReversals))
            canvas.Item(1, "-", $"{compared.Names[reversal.First]} is above {compared.Names[reversal.Second]} by {result.Profiles[pair.A]}, below by {result.Profiles[pair.B]}{Cause(reversal)}{(reversal.IsCertain ? "" : ", unless open values decide otherwise")}.");
        if (all.Length > MostReversals) canvas.Item(1, "-", $"and {(all.Length - MostReversals).ToString(culture)} more; --json lists all.");
        if (all.Any(each => each.Reversal.Cause is not null && !each.Pair.HasExactCauses))
            canvas.Line("Where scores are no sums, the cause is the largest part of a stand-in, share times value.");
    }

    static string Cause(Analysis.Agreement.Reversal reversal) => reversal.Cause is { } cause ? $", mostly for {cause.Criterion}" : "";

    void Dominance(Compared compared)
    {
        var result = compared.Result;
        canvas.Line();
        canvas.Heading("Under any weights");
        foreach (var pair in result.Dominance.Pairs.Take(MostReversals))
            canvas.Item(1, "-", $"{compared.Names[pair.Over]} is never below {compared.Names[pair.Under]}.");
        if (result.Dominance.Pairs.IsEmpty) canvas.Item(1, "-", "no order holds for every pair of weights: weights decide.");
        canvas.Line($"None is above for certain: {string.Join(", ", result.Dominance.Efficient.Select(unit => compared.Names[unit]))}.");
    }
}
