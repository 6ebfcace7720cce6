using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Score;

/// <summary>A ranking as a table; says where the order is not settled.</summary>
sealed class RankingView(Canvas canvas, CultureInfo culture)
{
    readonly Shown shown = new(culture);

    public void Show(IEnumerable<Judgement> judgements)
    {
        var ranked = Placing.Of(judgements);
        canvas.Table([("Place", true), ("Device", false), ("Points", true), ("Fully known", true), ("Against the next", false)], ranked.Select(Row));
        foreach (var note in Notes(ranked)) canvas.Line(note);
        if (Notes(ranked).Any()) canvas.Line();
    }

    string[] Row(Placing each) => [
        shown.Place(each), each.Judgement.Device, shown.Points(each.Judgement.Score.Shown), shown.Percent(each.Judgement.Score.Coverage), Text(each.Next)];

    static IEnumerable<string> Notes(IReadOnlyList<Placing> ranked)
    {
        if (ranked.Any(each => each.Best < each.Worst)) yield return "A place like 1 to 2 is not settled: the totals overlap until more is observed.";
        if (ranked.Zip(ranked.Skip(1)).Any(pair => LooksLevel(pair.First, pair.Second))) yield return "Where two totals look the same, their exact values decide.";
    }

    static bool LooksLevel(Placing upper, Placing lower) =>
        upper.Next == Standing.Above && upper.Judgement.Score.Shown == lower.Judgement.Score.Shown;

    static string Text(Standing standing) => standing switch
    {
        Standing.Above => "above",
        Standing.Level => "level",
        Standing.Open => "not settled",
        _ => "",
    };
}
