using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Adhesives;

/// <summary>Design changes for <see cref="AdhesiveStrengthCriterion"/>: a bond that lets go when its strips are pulled.</summary>
/// <remarks>Only bonds that an operation of their own opens: what is opened along with screws says nothing of the bond.</remarks>
static class AdhesiveStrengthChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context) =>
        from bond in context.JudgedParts.SelectMany(part => AdhesiveStrengthFacts.Of(context.Case, part).Bonds).DistinctBy(bond => bond.Joint.Id, StringComparer.Ordinal)
        where !bond.Joint.Integral && bond.Joint.Adhesive?.Type.Is(AdhesiveType.StretchRelease) != true
            && JudgedBond.Of(context, bond).Points.Low < AsStretchRelease(context)
        let operation = SoleOperation.Undoing(context.Case.Record, bond.Joint.Id)
        where operation is not null && !IsPrepared(context.Case.Record, operation)
        select StretchRelease(context.Case, bond.Joint, operation);

    // Nobody has measured the new bond: its low end is what the means leave.
    static decimal AsStretchRelease(DeviceContext context) => Math.Max(
        context.Scale.Min,
        context.Points(AdhesiveStrengthOptions.Means, Word.Of(Means.StretchRelease)).Low
            - context.Get(AdhesiveStrengthOptions.Tolerance) * (context.Scale.Max - context.Scale.Min));

    // What is heated or soaked beforehand would still be so.
    static bool IsPrepared(TeardownRecord record, Operation operation) => operation.After.SelectMany(Operations).Any(id =>
        record.Operations.Any(before => before.Id == id && SoleOperation.HeatsOrDissolves(record, before)));

    static IEnumerable<string> Operations(Condition condition) => condition switch
    {
        Condition.Done done => [done.Id],
        Condition.AllOf all => all.Items.SelectMany(Operations),
        Condition.AnyOf any => any.Items.SelectMany(Operations),
        _ => [],
    };

    static DesignChange StretchRelease(TeardownCase source, Joint joint, Operation operation) => DesignPatch.Empty
        .Set(source.At(joint), "kind", Word.Of(JointKind.Adhesive))
        .Set(source.At(joint), "reuse", Word.Of(Reuse.Removable))
        .Set(source.At(joint), "adhesive", new JsonObject { ["type"] = Word.Of(AdhesiveType.StretchRelease) })
        .Then(SoleOperation.ByHand(source, operation, OperationAction.Pull))
        .As($"stretch-release-{joint.Id}", Reason.Of(
            "stretch-release", "Hold {joint} with stretch-release strips that are pulled out by hand, in {operation}.",
            [source.At(joint), source.At(operation)], ("joint", joint.Id), ("operation", operation.Id)));
}
