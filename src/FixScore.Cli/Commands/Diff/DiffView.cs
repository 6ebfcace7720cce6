using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Generations;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Diff;

/// <summary>Differences for people: the scores, what did it and why, then what changed, topic by topic.</summary>
sealed class DiffView(Canvas canvas, CultureInfo culture)
{
    const int MostOfATopic = 15;

    // From what a reader asks first to how the work is done.
    static readonly (string Topic, string Title)[] Order =
    [
        ("device", "The device"), ("support", "Support"), ("parts", "Parts"), ("absent", "Roles without a part"), ("joints", "What holds parts"), ("spares", "Spare parts"),
        ("documentation", "Documents"), ("locks", "Locks"), ("tools", "Tools"), ("consumables", "Consumables"), ("operations", "Operations"), ("milestones", "Milestones"),
    ];

    public void Show(Difference found)
    {
        canvas.Heading($"From {Name(found.Old)} to {Name(found.New)}");
        if (found.Attribution is { } attribution) new AttributionView(canvas, new Shown(culture), culture).Show(found.Profile!, attribution);
        if (found.IsNone) canvas.Line("The records say the same of the device.");
        foreach (var topic in RecordChanges.ByEntry(found.Old, found.New).GroupBy(change => change.Topic).OrderBy(topic => Place(topic.Key)).ThenBy(topic => topic.Key, StringComparer.Ordinal))
            Topic(topic.Key, [.. topic.OrderBy(change => change.IsMinor)]);
        new ProofView(canvas).Show(found.Proofs);
        canvas.Line();
        canvas.Line("+ new, - gone, * changed. Entries are matched by id, else by what they are like. Units, footage and who assessed when are not compared.");
    }

    static string Name(Records.TeardownRecord record) => $"{record.Device.Maker} {record.Device.Model} ({record.Id})";

    static int Place(string topic) => Array.FindIndex(Order, each => each.Topic == topic) is >= 0 and var place ? place : Order.Length;

    static string Title(string topic) => Place(topic) < Order.Length ? Order[Place(topic)].Title : $"{char.ToUpperInvariant(topic[0])}{topic[1..]}";

    void Topic(string topic, ImmutableArray<EntryChange> changes)
    {
        canvas.Line();
        canvas.Heading(Title(topic));
        foreach (var change in changes.Take(MostOfATopic)) canvas.Item(1, Mark(change.Kind), Text(change));
        if (changes.Length > MostOfATopic) canvas.Item(1, "", string.Create(culture, $"and {changes.Skip(MostOfATopic).Sum(each => each.Entries.Length)} more; --json lists all."), quiet: true);
    }

    static string Text(EntryChange change) => change.Entries.IsEmpty ? change.Text : $"{string.Join(", ", change.Entries)}: {change.Text}";

    static string Mark(ChangeKind kind) => kind switch { ChangeKind.Added => "+", ChangeKind.Removed => "-", _ => "*" };
}
