using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Analysis.Assessors;
using FixScore.Records;

namespace FixScore.Analysis.Generations;

/// <summary>What changed between two records: last year's model and this one, or two versions of one record. Stateless, so safe to use from any thread.</summary>
/// <remarks>
/// Entries are matched by id, else by what they are like: parts by role, joints by kind and the parts they join, tools and
/// consumables by name, operations by action and what they undo and remove; only where just one is left on each side. Who assessed
/// when, units, trials, locks, findings and footage are observations of one device, and are not compared; what trials prove
/// shows in the scores.
/// </remarks>
public static class RecordChanges
{
    static readonly string[] NotCompared = ["assessment", "swaps", "locks", "findings", "sequences", "format", "$schema"];

    static readonly string[] NotComparedBelow = ["footage", "outcomes", "perUnit", "note", "id"];

    /// <summary>The changes, ordinal by path.</summary>
    /// <param name="old">The old record.</param>
    /// <param name="new">The new record.</param>
    public static ImmutableArray<RecordChange> Between(TeardownRecord old, TeardownRecord @new)
    {
        var (before, after) = (Parsed(old), Parsed(@new));
        var renamed = Renaming.Apply(before, after);
        return [.. RecordDisagreements.BetweenJson([before.ToJsonString(), after.ToJsonString()]).Where(IsCompared).Select(each => Change(each, renamed))];
    }

    static JsonObject Parsed(TeardownRecord record) => JsonNode.Parse(RecordFile.ToJson(record))!.AsObject();

    static bool IsCompared(Disagreement each)
    {
        var path = each.Path.Text.Split('/');
        return !NotCompared.Contains(path[1]) && !NotComparedBelow.Contains(path[^1]) && !path.Contains("perUnit") && !path.Contains("footage") && !path.Contains("outcomes");
    }

    static RecordChange Change(Disagreement each, IReadOnlyDictionary<string, string> renamed)
    {
        var kind = each.Values[0] is null ? ChangeKind.Added : each.Values[1] is null ? ChangeKind.Removed : ChangeKind.Changed;
        var entry = each.Path.Text.Split('/') is [_, _, var id, ..] ? id : "";
        return new(kind, each.Path, (each.At[1] ?? each.At[0])!.Value, each.Values[0], each.Values[1], renamed.GetValueOrDefault(entry));
    }
}
