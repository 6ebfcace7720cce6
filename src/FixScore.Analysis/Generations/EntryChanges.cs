using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Analysis.Generations.Words;

namespace FixScore.Analysis.Generations;

/// <summary>Gathers the changes of members to changes of entries.</summary>
sealed class EntryChanges(ComparedRecords records)
{
    public ImmutableArray<EntryChange> Of(ImmutableArray<RecordChange> changes) =>
    [
        .. from entry in changes.GroupBy(change => (change.Topic, change.Entry)).Select(OfEntry)
           group entry by (entry.Topic, entry.Kind, entry.Text) into alike
           select alike.First() with { Entries = [.. alike.SelectMany(each => each.Entries)], Changes = [.. alike.SelectMany(each => each.Changes)] },
    ];

    EntryChange OfEntry(IGrouping<(string Topic, string? Entry), RecordChange> entry)
    {
        var first = entry.First();
        var isWhole = entry.Key.Entry is not null && !first.Below.Any();
        return new(isWhole ? first.Kind : ChangeKind.Changed, entry.Key.Topic, Names(first), isWhole ? ChangeText.Entry(first) : string.Join("; ", Phrases(entry)), [.. entry]);
    }

    static ImmutableArray<string> Names(RecordChange change) =>
        change.Entry is not { } entry ? [] : [change.Was is { } was ? $"{entry} (was {was})" : entry];

    // What a joint holds with is told as a whole.
    IEnumerable<string> Phrases(IGrouping<(string Topic, string? Entry), RecordChange> entry)
    {
        var holds = entry.Where(change => change.Topic == "joints" && JointText.Members.Contains(change.Below.FirstOrDefault())).ToArray();
        if (holds.Length > 0) yield return Held(entry.Key.Entry!);
        foreach (var change in entry.Except(holds)) yield return ChangeText.Phrase(change);
    }

    string Held(string joint) =>
        $"{ValueText.And(Joint(records.New, joint).GetProperty("joins").EnumerateArray().Select(ValueText.Plain))} held by {JointText.Of(Joint(records.New, joint))}; before by {JointText.Of(Joint(records.OldAsNow, joint))}";

    static JsonElement Joint(JsonObject record, string id)
    {
        using var joint = JsonDocument.Parse(record["joints"]!.AsArray().First(joint => joint!["id"]!.GetValue<string>() == id)!.ToJsonString());
        return joint.RootElement.Clone();
    }
}
