using System.Collections.Immutable;
using System.Text.Json.Nodes;
using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>Design changes for <see cref="SpareAvailabilityCriterion"/>: spares sold to everyone up to a rung, all others to professional repairers.</summary>
/// <remarks>One change for each rung that is not reached: part of a rung is worth nothing.</remarks>
static class SpareAvailabilityChanges
{
    public static IEnumerable<DesignChange> Of(DeviceContext context)
    {
        var facts = SpareAvailabilityFacts.Of(context.Case, context.Get(SpareAvailabilityOptions.Ladder));
        if (facts.Roles.Any(role => role.Standing == RoleStanding.NotRecorded)) return [];
        var reached = facts.Worst is { } worst ? facts.Rungs.IndexOf(worst) : -1;
        return Enumerable.Range(reached + 1, facts.Rungs.Length - reached - 1).Select(rung => Sell(context.Case, facts, rung)).OfType<DesignChange>();
    }

    static DesignChange? Sell(TeardownCase source, SpareAvailabilityFacts facts, int upTo)
    {
        var wanted = facts.Rungs.SelectMany((rung, i) => rung.Roles.SelectMany(role => role.Parts), (rung, part) => part).ToArray();
        var everyone = facts.Rungs[..(upTo + 1)].SelectMany(rung => rung.Roles).SelectMany(role => role.Parts).ToHashSet();
        var patch = wanted.Aggregate(DesignPatch.Empty, (all, part) => all.Then(Sell(source, part, everyone.Contains(part))));
        if (patch.IsEmpty) return null;
        if (!source.Record.Spares.IsRecorded) patch = DesignPatch.Empty.Set(Pointer.Root, "spares", new JsonArray()).Then(patch);
        var roles = facts.Rungs[upTo].Roles.Select(role => role.Role).ToArray();
        return patch.As($"sell-up-to-{roles[0]}", Reason.Of(
            "sell-spares", "Sell spares to everyone up to the rung of {rung}, and all others to professional repairers.",
            wanted.Select(part => source.At(part.Part)), ("rung", string.Join(", ", roles))));
    }

    static DesignPatch Sell(TeardownCase source, PartSpares part, bool toEveryone)
    {
        var (needed, audience) = toEveryone ? (SpareAccess.Everyone, Audience.Public) : (SpareAccess.Professionals, Audience.Repairers);
        if (AccessRange.Of(part).Worst >= needed) return DesignPatch.Empty;
        return part.Listed.IsEmpty
            ? DesignPatch.Empty.Append(Pointer.Root.Child("spares"), new JsonObject { ["part"] = part.Part.Id, ["audience"] = Word.Of(audience) })
            : DesignPatch.Empty.Set(source.At(part.Listed[0]), "audience", Word.Of(audience));
    }
}
