using System.Text.Json;
using FixScore.Analysis.Generations.Words;

namespace FixScore.Analysis.Generations;

/// <summary>Says a change in the words of the record.</summary>
static class ChangeText
{
    /// <summary>A sentence that stands alone.</summary>
    public static string Of(RecordChange change)
    {
        var (what, member) = (Subject(change), Member(change));
        if (member.Length == 0 && change.Kind != ChangeKind.Changed) return $"{what} is {(change.Kind == ChangeKind.Added ? "new" : "gone")}: {Entry(change)}.";
        var (old, @new) = (Value(change, change.Old), Value(change, change.New));
        return $"{what}: {(member.Length == 0 ? "" : member + " is ")}" + change.Kind switch
        {
            ChangeKind.Added => $"now {@new}; before, it was not recorded.",
            ChangeKind.Removed => $"no longer recorded; it was {old}.",
            _ => $"now {@new}, was {old}.",
        };
    }

    /// <summary>A phrase about a member of an entry that is named before.</summary>
    public static string Phrase(RecordChange change)
    {
        var member = Member(change) is { Length: > 0 } named ? named : change.Topic;
        return change.Kind switch
        {
            ChangeKind.Added => $"{member} {Value(change, change.New)} (was not recorded)",
            ChangeKind.Removed => $"{member} not recorded (was {Value(change, change.Old)})",
            _ => $"{member} {Differs(change) ?? $"{Value(change, change.New)} (was {Value(change, change.Old)})"}",
        };
    }

    /// <summary>What a whole entry that is new or gone is.</summary>
    public static string Entry(RecordChange change) => Read(change.New ?? change.Old!, value => EntryText.Of(change.Topic, value));

    /// <summary>The entry, with the id that it had.</summary>
    static string Subject(RecordChange change) => change.Entry is { } entry
        ? $"{(change.Topic.EndsWith('s') ? change.Topic[..^1] : change.Topic)} {entry}{(change.Was is { } was ? $" (was {was})" : "")}"
        : change.Topic;

    static string Member(RecordChange change) => MemberWords.Label(change.Below);

    static string Value(RecordChange change, string? json) => json is null ? "" : Read(json, value => ValueText.Of(change.Below.LastOrDefault(""), value));

    static string? Differs(RecordChange change) => Read(change.OldAsNow ?? change.Old!, old => Read(change.New!, @new => ValueText.Difference(old, @new)));

    static T Read<T>(string json, Func<JsonElement, T> say)
    {
        using var document = JsonDocument.Parse(json);
        return say(document.RootElement);
    }
}
