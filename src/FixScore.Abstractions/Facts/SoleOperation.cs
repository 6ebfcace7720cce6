using FixScore.Records;

namespace FixScore;

/// <summary>An operation that does nothing but undo one joint, so that it can change with the joint.</summary>
public static class SoleOperation
{
    /// <summary>The first operation of disassembly that undoes a joint and no other, does no damage, and that none follows directly; <c>null</c> when there is none.</summary>
    /// <param name="record">The record.</param>
    /// <param name="joint">Id of the joint.</param>
    public static Operation? Undoing(TeardownRecord record, string joint) => record.Operations.FirstOrDefault(operation =>
        operation.Phase == OperationPhase.Disassembly && operation.Undoes is [var only] && only == joint
        && operation.Damages.IsEmpty && !record.Operations.Any(next => next.DirectlyAfter == operation.Id));

    /// <summary>Whether an operation is done hot or with a solvent, by its action or by a tool of its first set.</summary>
    /// <param name="record">The record.</param>
    /// <param name="operation">One of its operations.</param>
    public static bool HeatsOrDissolves(TeardownRecord record, Operation operation) =>
        operation.Action is OperationAction.Heat or OperationAction.ApplySolvent
        || record.Tools.Any(tool => operation.Tools.AsArray().Contains(tool.Id) && (tool.HeatC is not null || tool.Solvent is not null));

    /// <summary>A patch that makes an operation bare-handed work of another kind, without what it directly followed.</summary>
    /// <param name="source">The case.</param>
    /// <param name="operation">One of its operations.</param>
    /// <param name="action">What is done instead.</param>
    public static DesignPatch ByHand(TeardownCase source, Operation operation, OperationAction action)
    {
        var at = source.At(operation);
        var patch = DesignPatch.Empty.Set(at, "action", Word.Of(action)).Set(at, "tools", DesignPatch.Words());
        if (!operation.OrTools.IsEmpty) patch = patch.Remove(at, "orTools");
        return operation.DirectlyAfter is null ? patch : patch.Remove(at, "directlyAfter");
    }
}
