using System.Collections.Immutable;
using FixScore.Cli.Commands.Score;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Demo;

/// <summary>What the demo tells.</summary>
sealed class DemoView(CommandSession session)
{
    public const string Title = "Four slate tablets before a tender";

    public const string Story =
        "A school district's repair workshop took two units of each tablet apart, swapped parts between them and put them together again. "
        + "The district asks which one it can keep running. Makers, models and records are invented.";

    public const string PageName = "report.html";
    public const string RankingName = "ranking.svg";
    public const string RoutesName = "routes.svg";

    readonly Canvas canvas = session.Canvas;

    public static string ScoreName(Judgement judgement) => $"{judgement.Record.Id}.{judgement.Profile.Id}.score.json";

    public void Show(ImmutableArray<Judgement> judgements, string folder)
    {
        canvas.Heading(Title);
        canvas.Line(Story);
        canvas.Line();
        var profiles = judgements.GroupBy(each => each.Profile).ToArray();
        foreach (var profile in profiles) Ranked(profile.Key, profile);
        WeakestPoint(Placing.Of(profiles[0])[0].Judgement);
        Files(judgements, folder);
    }

    void Ranked(Profile profile, IEnumerable<Judgement> judgements)
    {
        var scale = profile.Scale;
        canvas.Heading($"By {profile.Title} ({profile.Id} {profile.Version}), {session.Shown.Number(scale.Min)} to {session.Shown.Number(scale.Max)}, more is better");
        new RankingView(canvas, session.Culture).Show(judgements);
    }

    void WeakestPoint(Judgement winner)
    {
        if (winner.Limit is not { } limit) return;
        canvas.Heading($"The winner's weakest point: {winner.Device}");
        canvas.Line(new VerdictText(session.Culture).Limit(winner));
        foreach (var reason in limit.Reasons) canvas.Item(0, "-", $"{reason.Text} ({EvidenceText.Of(winner.Record, reason.Pointers)})");
        foreach (var missing in VerdictText.Missing(winner, limit.Missing)) canvas.Item(0, "?", missing);
        canvas.Line();
    }

    void Files(ImmutableArray<Judgement> judgements, string folder)
    {
        var first = judgements[0];
        canvas.Heading($"Written to {folder}");
        canvas.Terms([
            (PageName, "the report: open it in a browser"),
            (RankingName, "the ranking as a picture"),
            (RoutesName, "how the winner comes apart"),
            ("*.score.json", $"{session.Shown.Number(judgements.Length)} score documents, one for each record and profile"),
            ("*.json", $"the {session.Shown.Number(judgements.Select(each => each.Record.Id).Distinct().Count())} records")]);
        canvas.Line();
        canvas.Line("Check one, or look closer:");
        canvas.Code($"  fixscore verify {folder}/{ScoreName(first)} --record {folder}/{first.Record.Id}.json");
        canvas.Code($"  fixscore score {folder}/{first.Record.Id}.json --profile {first.Profile.Id} --explain");
    }
}
