using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixScore.Analysis.Assessors;
using FixScore.Canonical;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Analysis.Generations;

/// <summary>Two records side by side: the old one as it is, and with the ids that its entries have in the new one.</summary>
sealed class ComparedRecords
{
    static readonly string[] NotCompared = ["assessment", "swaps", "findings", "sequences", "format", "$schema"];

    static readonly string[] NotComparedBelow = ["footage", "outcomes", "perUnit", "note", "id"];

    readonly JsonElement old, @new;

    public ComparedRecords(TeardownRecord old, TeardownRecord @new)
    {
        (this.old, this.@new) = (Element(old), Element(@new));
        (OldAsNow, New) = (Parsed(this.old), Parsed(this.@new));
        Renamed = Renaming.Apply(OldAsNow, New);
    }

    public JsonObject OldAsNow { get; }

    public JsonObject New { get; }

    /// <summary>The old id of every new one that differs.</summary>
    public IReadOnlyDictionary<string, string> Renamed { get; }

    public ImmutableArray<RecordChange> Changes =>
        [.. RecordDisagreements.BetweenJson([OldAsNow.ToJsonString(), New.ToJsonString()]).Where(IsCompared).Select(Change)];

    static JsonElement Element(TeardownRecord record)
    {
        using var document = JsonDocument.Parse(RecordFile.ToJson(record));
        return document.RootElement.Clone();
    }

    static JsonObject Parsed(JsonElement record) => JsonNode.Parse(record.GetRawText())!.AsObject();

    static bool IsCompared(Disagreement each)
    {
        var path = each.Path.Text.Split('/')[1..];
        return !NotCompared.Contains(path[0]) && !path.Skip(RecordChange.HasEntries(path[0]) ? 2 : 1).Any(NotComparedBelow.Contains) && path is not ["locks", _, "unit"];
    }

    RecordChange Change(Disagreement each)
    {
        var kind = each.Values[0] is null ? ChangeKind.Added : each.Values[1] is null ? ChangeKind.Removed : ChangeKind.Changed;
        var entry = each.Path.Text.Split('/') is [_, _, var id, ..] ? id : "";
        return new(kind, each.Path, (each.At[1] ?? each.At[0])!.Value, TextAt(old, each.At[0]), TextAt(@new, each.At[1]), Renamed.GetValueOrDefault(entry)) { OldAsNow = each.Values[0] };
    }

    // As the record has it: with its own ids and in its order, which were no matter for whether anything differs.
    static string? TextAt(JsonElement record, Pointer? at) => at is { } place ? Encoding.UTF8.GetString(CanonicalJson.ToBytes(JsonPointers.Resolve(record, place.Text)!.Value)) : null;
}
