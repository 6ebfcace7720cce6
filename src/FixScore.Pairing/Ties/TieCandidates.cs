using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Ties;

/// <summary>All ties that a trial can break, as candidates.</summary>
sealed class TieCandidates : ICandidates
{
    readonly ForeignParts parts;
    readonly FrozenDictionary<string, Tie> byKey;
    readonly FrozenDictionary<string, ImmutableArray<string>> byGroups;
    readonly FrozenDictionary<string, string> groupOf;

    public TieCandidates(ForeignParts parts, PartGroups groups)
    {
        this.parts = parts;
        var ids = parts.Candidates;
        groupOf = ids.ToFrozenDictionary(id => id, id => groups.Of(id).Parts[0].Id, StringComparer.Ordinal);
        ToBoard = [.. ids.Select(id => new Tie(id))];
        Between =
        [
            .. from first in Enumerable.Range(0, ids.Length)
               from second in Enumerable.Range(first + 1, ids.Length - first - 1)
               where groupOf[ids[first]] != groupOf[ids[second]]
               select new Tie(ids[first], ids[second]),
        ];
        byKey = ToBoard.Concat(Between).ToFrozenDictionary(KeyOf, StringComparer.Ordinal);
        byGroups = ToBoard.Concat(Between).GroupBy(GroupsOf)
            .ToFrozenDictionary(ties => ties.Key, ties => ties.Select(KeyOf).ToImmutableArray(), StringComparer.Ordinal);
    }

    public ImmutableArray<Tie> ToBoard { get; }

    public ImmutableArray<Tie> Between { get; }

    public Tie Of(string key) => byKey[key];

    /// <summary>Keys of all ties between the groups that a tie stands between.</summary>
    public ImmutableArray<string> WithinGroupsOf(Tie tie) => byGroups[GroupsOf(tie)];

    public ImmutableArray<string> In(SwapTrial trial)
    {
        var (reference, unitOf) = parts.UnitsIn(trial);
        var units = parts.Candidates.ToDictionary(part => part, unitOf, StringComparer.Ordinal);
        return
        [
            .. ToBoard.Where(tie => units[tie.Part] != reference).Select(KeyOf),
            .. Between.Where(tie => units[tie.Part] != units[tie.With!]).Select(KeyOf),
        ];
    }

    public bool MayBlame(FunctionCheck check, string candidate)
    {
        var tie = byKey[candidate];
        return check.MayBlame(tie.Part) || (tie.With is { } other && check.MayBlame(other));
    }

    // A slug holds no line feed, so keys never collide.
    public static string KeyOf(Tie tie) => tie.With is { } other ? $"{tie.Part}\n{other}" : tie.Part;

    // Either order of two groups is the same pair of groups.
    string GroupsOf(Tie tie)
    {
        var first = groupOf[tie.Part];
        if (tie.With is null) return first;
        var second = groupOf[tie.With];
        return string.CompareOrdinal(first, second) < 0 ? $"{first}\n{second}" : $"{second}\n{first}";
    }
}
