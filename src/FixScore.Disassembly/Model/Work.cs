using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Model;

/// <summary>An operation as the search sees it.</summary>
/// <param name="Operation">The entry of the record.</param>
/// <param name="Needs">What must have been done before.</param>
/// <param name="DirectlyAfter">Number of the operation that must come directly before; <c>null</c> for none, -1 for one that is never done.</param>
/// <param name="Options">The sets of tools that do; the first may be unknown.</param>
/// <param name="Takes">Whether it removes or moves a part, which ends a step.</param>
/// <param name="IsHeatOrCleaning">Whether its action is heating or cleaning.</param>
sealed record Work(Operation Operation, Need Needs, int? DirectlyAfter, ImmutableArray<ToolOption> Options, bool Takes, bool IsHeatOrCleaning)
{
    public static Work Of(Operation operation, Need needs, int? directlyAfter, Func<string, bool> heats) => new(
        operation, needs, directlyAfter,
        [operation.Tools.IsRecorded ? ToolOption.Of(operation.Tools.AsArray(), heats) : ToolOption.Unknown, .. operation.OrTools.Select(tools => ToolOption.Of(tools, heats))],
        operation.Removes.Length > 0 || operation.Moves.Length > 0,
        operation.Action is OperationAction.Heat or OperationAction.Clean or OperationAction.RemoveResidue);
}

/// <summary>Tools used together.</summary>
/// <param name="Tools">Ids; not recorded when unknown.</param>
/// <param name="Heats">Whether one of them heats.</param>
sealed record ToolOption(EntryList<string> Tools, bool Heats)
{
    public static ToolOption Unknown { get; } = new(default, false);

    public static ToolOption Of(ImmutableArray<string> tools, Func<string, bool> heats) =>
        new(EntryList.Of(tools.Distinct(StringComparer.Ordinal).ToImmutableArray()), tools.Any(heats));
}
