using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>A record, the profile that judged it and the score: what every report is made of. Immutable and thread safe.</summary>
/// <param name="Record">The record.</param>
/// <param name="Profile">The profile.</param>
/// <param name="Score">The score.</param>
public sealed record Judgement(TeardownRecord Record, Profile Profile, ScoreDocument Score)
{
    /// <summary>Maker and model.</summary>
    public string Device => $"{Record.Device.Maker} {Record.Device.Model}";

    /// <summary>The lines that judge something of their own: one for each criterion, or for each part that it is asked about in turn.</summary>
    public IEnumerable<ScoreNode> Criteria => Score.Nodes.Where(node => node.Options is not null);

    /// <summary>The line whose improvement alone would lift the low end of the total most, among those with nothing below them; <c>null</c> when none can.</summary>
    public ScoreNode? Limit => Score.Nodes.Where(node => node.Headroom > 0 && !Below(node).Any()).MaxBy(node => node.Headroom);

    /// <summary>The lines directly or indirectly below one.</summary>
    public IEnumerable<ScoreNode> Below(ScoreNode node) =>
        Score.Nodes.Where(each => each.Path.StartsWith(node.Path + "/", StringComparison.Ordinal));

    /// <summary>The lines directly or indirectly above one, from the root.</summary>
    public IEnumerable<ScoreNode> Above(ScoreNode node) =>
        Score.Nodes.Where(each => node.Path.StartsWith(each.Path + "/", StringComparison.Ordinal));

    /// <summary>A line as people find it: the titles from below the root to the line itself.</summary>
    public string NameOf(ScoreNode node) =>
        string.Join(", ", Above(node).Skip(1).Append(node).Select(each => each.Title).Distinct(StringComparer.Ordinal));

    /// <summary>The scale of a line; that of the total where the profile gives it none.</summary>
    internal Scale ScaleOf(ScoreNode node) => Profile.Nodes.FirstOrDefault(each => each.Id == node.Id)?.Scale ?? Profile.Scale.Points;

    /// <summary>Whether lines add up to the total.</summary>
    internal bool AddsUp => Score.Nodes.Skip(1).Any(node => node.Contribution is not null);
}
