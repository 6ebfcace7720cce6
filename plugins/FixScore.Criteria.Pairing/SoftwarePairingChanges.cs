using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Pairing;

/// <summary>Design changes for <see cref="SoftwarePairingCriterion"/>: the maker unties a part.</summary>
/// <remarks>
/// An untied part asks for no notification and no authorisation, and what trials blame on it alone works. A function that
/// failed on its account works in every other trial with it as well, as far as that trial names nobody else.
/// </remarks>
static class SoftwarePairingChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context) =>
        context.JudgedParts.Where(part => !part.Inert).Select(part => Untie(context.Case, part)).OfType<DesignChange>();

    static DesignChange? Untie(TeardownCase source, Part part)
    {
        var group = source.Derive<PartGroups>().Of(part.Id);
        if (group.Parts.Any(each => each.Role == Roles.Mainboard)) return null;
        ImmutableArray<FunctionCheck> checks = [.. Blaming(source.Record, group)];
        if (checks.IsEmpty && !IsDemanding(part.Serialised)) return null;
        var patch = checks.Aggregate(DesignPatch.Empty, (all, check) => all.Set(source.At(check), "result", Word.Of(SwapResult.Works)));
        return Free(source, part, patch).As($"untie-{part.Id}", Reason.Of(
            "untie", "Accept any {part} without notification or authorisation, with all its functions.",
            [source.At(part), .. checks.Select(source.At)], ("part", part.Id)));
    }

    static DesignPatch Free(TeardownCase source, Part part, DesignPatch patch) => patch.Set(source.At(part), "serialised", new JsonObject
    {
        ["notify"] = Word.Of(SerialAction.None), ["authorise"] = Word.Of(SerialAction.None),
    });

    static bool IsDemanding(Serialisation? demand) => demand is not null && !(demand.Notify.Is(SerialAction.None) && demand.Authorise.Is(SerialAction.None));

    static IEnumerable<FunctionCheck> Blaming(TeardownRecord record, PartGroup group)
    {
        var seen = record.Swaps.SelectMany(trial => trial.Checks, (trial, check) => (Trial: trial, Check: check)).Where(each => IsFlagged(each.Check)).ToArray();
        var functions = seen.Where(each => BlamesOnly(each.Trial, each.Check, group)).Select(each => each.Check.Function).ToArray();
        return seen.Where(each => BlamesOnly(each.Trial, each.Check, group)
            || (functions.Contains(each.Check.Function) && !each.Check.Implicates.IsRecorded && MayBring(each.Trial, group))).Select(each => each.Check);
    }

    static bool IsFlagged(FunctionCheck check) =>
        !check.Result.IsUnknown && !check.Result.Is(SwapResult.Works) && !check.Result.MayBe(SwapResult.Untested);

    static bool BlamesOnly(SwapTrial trial, FunctionCheck check, PartGroup group) => check.Implicates.IsRecorded
        ? check.Implicates.Count > 0 && check.Implicates.All(group.Holds)
        : !trial.Installed.IsEmpty && trial.Installed.All(each => group.Holds(each.Part));

    // With a board from another unit all that stays is foreign.
    static bool MayBring(SwapTrial trial, PartGroup group) => !trial.Installed.IsEmpty && !trial.Installed.All(each => group.Holds(each.Part));
}
