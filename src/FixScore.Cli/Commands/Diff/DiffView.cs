using System.Globalization;
using FixScore.Analysis.Generations;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Diff;

/// <summary>Differences for people: the scores, what did it, then what changed, topic by topic.</summary>
sealed class DiffView(Canvas canvas, CultureInfo culture)
{
    const int MostOfATopic = 15;

    static readonly string[] Order = ["device", "parts", "absent", "joints", "tools", "consumables", "operations", "milestones", "documentation", "spares", "support", "observations"];

    readonly Shown shown = new(culture);

    public void Show(Difference found)
    {
        canvas.Heading($"From {Name(found.Old)} to {Name(found.New)}");
        if (found.Attribution is { } attribution) Scores(found.Profile!, attribution);
        if (found.Changes.IsEmpty) canvas.Line("The records say the same of the device.");
        foreach (var topic in found.Changes.GroupBy(change => change.Topic).OrderBy(topic => Place(topic.Key)).ThenBy(topic => topic.Key, StringComparer.Ordinal)) Topic(topic.Key, [.. topic]);
        canvas.Line();
        canvas.Line("Entries are matched by id, else by what they are like. Trials, units, footage and who assessed when are not compared.");
    }

    static string Name(Records.TeardownRecord record) => $"{record.Device.Maker} {record.Device.Model} ({record.Id})";

    void Scores(Profile profile, ScoreAttribution attribution)
    {
        canvas.Line($"By {profile.Id} {profile.Version}: {Points(attribution.Old)} before, {Points(attribution.New)} now.");
        if (attribution.Deltas.IsEmpty) return;
        canvas.Table(
            [("What did it", false), ("Low end", true), ("High end", true)],
            attribution.Deltas.OrderByDescending(delta => Math.Abs(delta.Low + delta.High)).Select(delta => (string[])[delta.Title, Signed(delta.Low), Signed(delta.High)])
                .Append(["together", Signed(attribution.New.Low - attribution.Old.Low), Signed(attribution.New.High - attribution.Old.High)]));
        canvas.Line(attribution.IsAdditive ? "Differences of contributions; they add up exactly." : "Shapley values: what each adds on average over all orders of change; they add up exactly.");
        canvas.Line();
    }

    string Points(Interval value) => shown.Points(new Interval(decimal.Round(value.Low, 2), decimal.Round(value.High, 2)));

    string Signed(decimal value) => decimal.Round(value, 2).ToString("+0.##;−0.##;0", culture);

    static int Place(string topic) => Array.IndexOf(Order, topic) is >= 0 and var place ? place : Order.Length;

    void Topic(string topic, RecordChange[] changes)
    {
        canvas.Heading($"{char.ToUpperInvariant(topic[0])}{topic[1..]}");
        foreach (var change in changes.Take(MostOfATopic)) canvas.Item(1, Mark(change.Kind), change.Text);
        if (changes.Length > MostOfATopic) canvas.Item(1, "", string.Create(culture, $"and {changes.Length - MostOfATopic} more; --json lists all."), quiet: true);
    }

    static string Mark(ChangeKind kind) => kind switch { ChangeKind.Added => "+", ChangeKind.Removed => "-", _ => "*" };
}
