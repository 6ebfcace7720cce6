using System.Collections.Immutable;
using FixScore.Cli.Commands.Score;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Demo;

/// <summary>What the demo tells.</summary>
sealed class DemoView(CommandSession session)
{
    public void Show(string title, string story, ImmutableArray<Judgement> judgements, string folder, ImmutableArray<string> files)
    {
        var canvas = session.Canvas;
        canvas.Heading(title);
        canvas.Line(story);
        canvas.Line();
        foreach (var ranked in judgements.GroupBy(each => each.Profile.Id)) Ranked(canvas, [.. ranked]);
        WeakestPoint(canvas, Judgement.Ranked(judgements.Where(each => each.Profile.Id == judgements[0].Profile.Id))[0]);
        Files(canvas, judgements, folder, files);
    }

    void Ranked(Terminal.Canvas canvas, ImmutableArray<Judgement> judgements)
    {
        var profile = judgements[0].Profile;
        canvas.Heading($"By {profile.Title} ({profile.Id} {profile.Version}), 0 to 100, more is better");
        canvas.Table([("", true), ("Device", false), ("Points", true), ("Fully known", true), ("Against the next", false)], Ranking.Of(judgements).Select(place => (string[])[
            session.Shown.Number(place.Rank), place.Judgement.Device, session.Shown.Points(place.Judgement.Score.Shown),
            session.Shown.Percent(place.Judgement.Score.Coverage), place.Remark]));
        canvas.Line();
    }

    void WeakestPoint(Terminal.Canvas canvas, Judgement winner)
    {
        if (winner.Limit is not { } limit) return;
        canvas.Heading($"The winner's weakest point: {winner.Device}");
        canvas.Line($"{limit.Title} ({limit.Path}) has {session.Shown.Points(limit.Shown)} points; at its best the low end of the total would rise by {session.Shown.Short(limit.Headroom)}.");
        foreach (var reason in limit.Reasons) canvas.Item(0, "-", $"{reason.Text} ({Shown.Evidence(winner.Record, reason.Pointers)})");
        foreach (var missing in limit.Missing) canvas.Item(0, "?", $"{missing.What} ({missing.At.Text})");
        canvas.Line();
    }

    static void Files(Terminal.Canvas canvas, ImmutableArray<Judgement> judgements, string folder, ImmutableArray<string> files)
    {
        canvas.Heading($"Written to {folder}");
        canvas.Item(0, "-", "summary.html: open it in a browser");
        canvas.Item(0, "-", $"{files.Count(name => name.EndsWith(".score.json", StringComparison.Ordinal))} score documents (*.score.json) and the {judgements.Select(each => each.Record.Id).Distinct().Count()} records");
        canvas.Line();
        canvas.Line("Check one, or look closer:");
        var first = judgements[0];
        canvas.Line($"  fixscore verify {folder}/{DemoCommand.ScoreName(first)} --record {folder}/{first.Record.Id}.json");
        canvas.Line($"  fixscore score {folder}/{first.Record.Id}.json --profile {first.Profile.Id} --explain");
    }
}
