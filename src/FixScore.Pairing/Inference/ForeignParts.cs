using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Inference;

/// <summary>Which parts are foreign in a trial: those that can carry a code and come from another unit than the main board.</summary>
sealed class ForeignParts
{
    readonly PartGroups groups;
    readonly FrozenSet<string> boardParts;
    readonly ImmutableArray<string> candidates;
    readonly string? board;

    public ForeignParts(TeardownRecord record, PartGroups groups)
    {
        this.groups = groups;
        var boards = record.Parts.Where(part => part.Role == Roles.Mainboard).ToImmutableArray();
        board = boards.FirstOrDefault()?.Id;
        boardParts = boards.SelectMany(part => groups.Of(part.Id).Parts).Select(part => part.Id).ToFrozenSet(StringComparer.Ordinal);
        Judged = [.. record.Parts.Where(part => !boardParts.Contains(part.Id))];
        candidates = [.. Judged.Where(part => !part.Inert).Select(part => part.Id)];
    }

    /// <summary>Parts that get a verdict: all but the main board's group.</summary>
    public ImmutableArray<Part> Judged { get; }

    /// <summary>Ids of the parts of a part's group that can be foreign.</summary>
    public ImmutableArray<string> CandidatesOfGroup(Part part) =>
        [.. groups.Of(part.Id).Parts.Select(each => each.Id).Where(candidates.Contains)];

    /// <summary>Ids of the foreign parts of a trial, in the order of the record; empty for a control.</summary>
    public ImmutableArray<string> In(SwapTrial trial) => [.. WithUnits(trial).Select(each => each.Part)];

    /// <summary>The foreign parts of a trial with the units they come from, in the order of the record.</summary>
    public ImmutableArray<InstalledPart> WithUnits(SwapTrial trial)
    {
        var installed = UnitsOf(trial);
        var reference = ReferenceOf(trial, installed);
        return [.. candidates.Select(part => new InstalledPart(part, installed.GetValueOrDefault(part, trial.Host))).Where(each => each.Unit != reference)];
    }

    /// <summary>The unit that the main board of a trial comes from.</summary>
    public string ReferenceOf(SwapTrial trial) => ReferenceOf(trial, UnitsOf(trial));

    string ReferenceOf(SwapTrial trial, Dictionary<string, string> installed) =>
        board is null ? trial.Host : installed.GetValueOrDefault(board, trial.Host);

    Dictionary<string, string> UnitsOf(SwapTrial trial)
    {
        var units = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (part, unit) in trial.Installed)
            foreach (var member in groups.Of(part).Parts)
                units.TryAdd(member.Id, unit);
        return units;
    }
}
