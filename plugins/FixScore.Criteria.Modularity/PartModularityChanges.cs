using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Modularity;

/// <summary>Design changes for <see cref="PartModularityCriterion"/>: an integral joint that comes apart, a spare sold alone, a plug instead of solder.</summary>
/// <remarks>
/// A joint is made separable where the record tells what happens then: of its two parts one is named by operations, and the
/// other, which none names, rides on it. Solder becomes a plug, all else a snap-fit, undone by hand in a new operation; what
/// was sold as one is sold by itself.
/// </remarks>
static class PartModularityChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        if (!context.Case.Record.Joints.IsRecorded) return [];
        var parts = context.JudgedParts.ToArray();
        var source = context.Case;
        return parts.SelectMany(part => source.Derive<PartGroups>().Of(part.Id).IntegralJoints).Distinct().Select(joint => Separate(source, joint)).OfType<DesignChange>()
            .Concat(parts.SelectMany(part => source.Derive<PartAssembly, string>(part.Id).Joints).Distinct().Where(IsSoldered).Select(joint => Plug(source, joint)))
            .Concat(context.Get(PartModularityOptions.Bundles) ? parts.SelectMany(part => Bundles(source, part)).Distinct().Select(spare => SellAlone(source, spare)) : []);
    }

    static bool IsSoldered(Joint joint) =>
        !joint.Integral && (joint.Kind is JointKind.Solder or JointKind.Weld || joint.Connector?.Type.Is(ConnectorType.SolderedWire) == true);

    static IEnumerable<Spare> Bundles(TeardownCase source, Part part) =>
        source.Record.Spares.Where(spare => source.Derive<PartGroups>().Of(part.Id).Holds(spare.Part) && !spare.OnlyBundledWith.IsEmpty);

    static DesignChange? Separate(TeardownCase source, Joint joint)
    {
        if (RidersOf(source.Record, joint) is not [var rider] || joint.Joins.FirstOrDefault(id => id != rider.Id) is not { } carrier) return null;
        var plug = joint.Kind is JointKind.Solder or JointKind.Weld;
        var patch = Apart(source, joint, plug ? JointKind.Connector : JointKind.SnapFit).Set(source.At(joint), "integral", false)
            .Append(Pointer.Root.Child("operations"), new JsonObject
            {
                ["id"] = FreeId(source.Record, $"separate-{joint.Id}"), ["action"] = Word.Of(plug ? OperationAction.Unplug : OperationAction.Unclip),
                ["tools"] = new JsonArray(), ["undoes"] = DesignPatch.Words(joint.Id),
            });
        if (rider.On is null) patch = patch.Set(source.At(rider), "on", carrier);
        patch = joint.Joins.Where(part => IsOnlySoldWithGroup(source, part)).Aggregate(patch, (all, part) =>
            all.Append(Pointer.Root.Child("spares"), new JsonObject { ["part"] = part, ["audience"] = Word.Of(Audience.Public) }));
        return patch.As($"separate-{joint.Id}", Reason.Of(
            "separate", "Make {rider} separable from {carrier}: {kind} instead of {joint}.", [source.At(joint)],
            ("rider", rider.Id), ("carrier", carrier), ("kind", plug ? "a plug" : "clips"), ("joint", joint.Id)));
    }

    // Of two parts the one that no operation names, with nothing or the other below it.
    static Part[] RidersOf(TeardownRecord record, Joint joint)
    {
        if (joint.Joins.Length != 2 || !record.Operations.IsRecorded) return [];
        var named = joint.Joins.Where(id => record.Operations.Any(operation => operation.Removes.Contains(id) || operation.Moves.Contains(id))).ToArray();
        return named.Length != 1 ? [] : [.. record.Parts.Where(part =>
            joint.Joins.Contains(part.Id) && part.Id != named[0] && (part.On is null || part.On == named[0]) && !RidesOn(record, named[0], part.Id))];
    }

    // The spare of a group serves its parts no longer: what comes apart is sold by itself.
    static bool IsOnlySoldWithGroup(TeardownCase source, string part) =>
        source.Record.Spares.All(spare => spare.Part != part) && source.Record.Spares.Any(spare => source.Derive<PartGroups>().Of(part).Holds(spare.Part));

    static bool RidesOn(TeardownRecord record, string rider, string carrier)
    {
        for (var at = record.Parts.First(part => part.Id == rider).On; at is not null; at = record.Parts.First(part => part.Id == at).On)
            if (at == carrier) return true;
        return false;
    }

    static DesignChange Plug(TeardownCase source, Joint joint) => Apart(source, joint, JointKind.Connector).As($"plug-{joint.Id}", Reason.Of(
        "plug", "Connect at {joint} by a plug instead of solder.", [source.At(joint)], ("joint", joint.Id)));

    static DesignPatch Apart(TeardownCase source, Joint joint, JointKind kind)
    {
        var at = source.At(joint);
        var patch = DesignPatch.Empty.Set(at, "kind", Word.Of(kind)).Set(at, "reuse", Word.Of(Reuse.Reusable));
        if (joint.Adhesive is not null) patch = patch.Remove(at, "adhesive");
        return kind == JointKind.Connector ? patch.Set(at, "connector", new JsonObject { ["type"] = Word.Of(ConnectorType.BoardToBoard) }) : patch;
    }

    static DesignChange SellAlone(TeardownCase source, Spare spare) => DesignPatch.Empty.Remove(source.At(spare), "onlyBundledWith")
        .As($"sell-alone-{spare.Part}", Reason.Of(
            "sell-alone", "Sell the spare for {part} without {bundled}.", [source.At(spare)],
            ("part", spare.Part), ("bundled", string.Join(", ", spare.OnlyBundledWith))));

    static string FreeId(TeardownRecord record, string wanted) =>
        record.Operations.Any(operation => operation.Id == wanted) ? FreeId(record, wanted + "-by-hand") : wanted;
}
