using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>A record, the profile that judged it and the score: what every report is made of.</summary>
/// <param name="Record">The record.</param>
/// <param name="Profile">The profile.</param>
/// <param name="Score">The score.</param>
public sealed record Judgement(TeardownRecord Record, Profile Profile, ScoreDocument Score)
{
    /// <summary>Maker and model.</summary>
    public string Device => $"{Record.Device.Maker} {Record.Device.Model}";

    /// <summary>The lines that judge something of their own: one for each criterion.</summary>
    public IEnumerable<ScoreNode> Criteria => Score.Nodes.Where(node => node.Options is not null);

    /// <summary>The lines directly or indirectly below one.</summary>
    public IEnumerable<ScoreNode> Below(ScoreNode node) =>
        Score.Nodes.Where(each => each.Path.StartsWith(node.Path + "/", StringComparison.Ordinal));

    /// <summary>The criterion or part whose improvement would lift the low end of the total most; <c>null</c> when nothing can.</summary>
    public ScoreNode? Limit => Score.Nodes.Where(node => node.Headroom > 0 && !Below(node).Any()).MaxBy(node => node.Headroom);

    /// <summary>Judgements in the order of a ranking: exact totals decide, low ends before high ends.</summary>
    public static IReadOnlyList<Judgement> Ranked(IEnumerable<Judgement> judgements) =>
        [.. judgements.OrderByDescending(each => each.Score.Total.Low + each.Score.Total.High)
            .ThenByDescending(each => each.Score.Total.Low).ThenBy(each => each.Record.Id, StringComparer.Ordinal)];
}
