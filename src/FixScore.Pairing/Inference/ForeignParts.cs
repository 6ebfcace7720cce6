using System.Collections.Frozen;
using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Inference;

/// <summary>Which parts are foreign in a trial: those that can carry a code and come from another unit than the main board.</summary>
sealed class ForeignParts : ICandidates
{
    readonly PartGroups groups;
    readonly FrozenSet<string> boardParts;
    readonly string? board;

    public ForeignParts(TeardownRecord record, PartGroups groups)
    {
        this.groups = groups;
        var boards = record.Parts.Where(part => part.Role == Roles.Mainboard).ToImmutableArray();
        board = boards.FirstOrDefault()?.Id;
        boardParts = boards.SelectMany(part => groups.Of(part.Id).Parts).Select(part => part.Id).ToFrozenSet(StringComparer.Ordinal);
        Judged = [.. record.Parts.Where(part => !boardParts.Contains(part.Id))];
        Candidates = [.. Judged.Where(part => !part.Inert).Select(part => part.Id)];
    }

    /// <summary>Parts that get a verdict: all but the main board's group.</summary>
    public ImmutableArray<Part> Judged { get; }

    /// <summary>Ids of the parts that can be foreign, in the order of the record.</summary>
    public ImmutableArray<string> Candidates { get; }

    /// <summary>Ids of the parts of a part's group that can be foreign.</summary>
    public ImmutableArray<string> CandidatesOfGroup(Part part) =>
        [.. groups.Of(part.Id).Parts.Select(each => each.Id).Where(Candidates.Contains)];

    /// <summary>Ids of the foreign parts of a trial, in the order of the record; empty for a control.</summary>
    public ImmutableArray<string> In(SwapTrial trial) => [.. WithUnits(trial).Select(each => each.Part)];

    /// <summary>The foreign parts of a trial with the units they come from, in the order of the record.</summary>
    public ImmutableArray<InstalledPart> WithUnits(SwapTrial trial)
    {
        var (reference, unitOf) = UnitsIn(trial);
        return [.. Candidates.Select(part => new InstalledPart(part, unitOf(part))).Where(each => each.Unit != reference)];
    }

    /// <inheritdoc/>
    public bool MayBlame(FunctionCheck check, string candidate) => check.MayBlame(candidate);

    /// <summary>The unit that the main board of a trial comes from.</summary>
    public string ReferenceOf(SwapTrial trial) => UnitsIn(trial).Reference;

    /// <summary>The unit that the main board of a trial comes from, and the unit of each part.</summary>
    public (string Reference, Func<string, string> UnitOf) UnitsIn(SwapTrial trial)
    {
        var installed = UnitsOf(trial);
        return (board is null ? trial.Host : UnitOf(board), UnitOf);

        string UnitOf(string part) => installed.GetValueOrDefault(part, trial.Host);
    }

    Dictionary<string, string> UnitsOf(SwapTrial trial)
    {
        var units = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (part, unit) in trial.Installed)
            foreach (var member in groups.Of(part).Parts)
                units.TryAdd(member.Id, unit);
        return units;
    }
}
