using FixScore.Records;

namespace FixScore.Criteria.Spares;

/// <summary>What <see cref="SpareAvailabilityCriterion"/> says: how far up the ladder, and one reason for each role.</summary>
sealed class SpareAvailabilityReasons(TeardownCase source)
{
    static readonly Pointer List = Pointer.Root.Child("spares");

    public static Reason NothingAsked() => Reason.Of("no-roles", "The profile asks for the spare of no role.", []);

    public Reason Reached(SpareAvailabilityFacts facts, Interval points) => ReachedBy(facts.Worst, facts.Best) with { Points = points };

    public Reason Of(RoleSpares role) => role.Standing switch
    {
        RoleStanding.Present => Reason.Of(
            "spare-sold-to", "Spare for {role}: sold to {audience}.", At(role), ("role", role.Role), ("audience", Shown(role.Access))),
        RoleStanding.Absent => Reason.Of(
            "role-absent", "The device has no {role}: no spare is needed.", [AtAbsent(role.Role)], ("role", role.Role)),
        RoleStanding.NotExpected => Reason.Of(
            "role-not-expected", "A display that does not fold needs no {role}, and none is recorded.", [], ("role", role.Role)),
        _ => Reason.Of("role-not-recorded", "No part is recorded as {role}, nor that there is none.", [], ("role", role.Role)),
    };

    public IEnumerable<Missing> Missing(RoleSpares role)
    {
        if (role.Access.IsExact) return [];
        if (role.Standing == RoleStanding.NotRecorded) return [new(Pointer.Root, $"a part with role {role.Role}, or the role among those absent")];
        return role.Parts.SelectMany(Open);
    }

    public IEnumerable<Missing> MissingJoints(SpareAvailabilityFacts facts)
    {
        var matters = facts.Roles.Any(role => !role.Access.IsExact && role.Parts.Any(part => !part.IsUnknown && !part.Possible.IsEmpty));
        return matters ? [new(Pointer.Root, "joints")] : [];
    }

    static Reason ReachedBy(Rung? worst, Rung? best) => (worst, best) switch
    {
        (null, null) => Reason.Of(
            "no-rung", "No rung: everyone must be able to buy the spares of the first, and professional repairers all others.", [List]),
        _ when worst == best => Reason.Of(
            "rung", "Everyone can buy the spares up to the rung of {rung}, professional repairers all others.", [List], ("rung", Shown(worst))),
        _ => Reason.Of(
            "rung-open", "Everyone can buy the spares up to the rung of {most} at best, {least} at worst.", [List],
            ("most", Shown(best)), ("least", Shown(worst))),
    };

    IEnumerable<Missing> Open(PartSpares part)
    {
        if (part.IsUnknown) return [new(source.At(part.Part), "a spare for it")];
        return part.Listed.Where(spare => !AccessRange.Of(spare).IsExact).Select(spare => new Missing(source.At(spare), "audience"));
    }

    IEnumerable<Pointer> At(RoleSpares role) =>
        role.Parts.SelectMany(part => part.Listed.Select(source.At).Prepend(source.At(part.Part))).Distinct();

    Pointer AtAbsent(string role) => Pointer.Root.Child("absent").Child(source.Record.Absent.AsArray().IndexOf(role));

    static Value Shown(Rung? rung) => rung is null ? "none" : string.Join(", ", rung.Roles.Select(role => role.Role));

    static Value Shown(AccessRange access) =>
        access.IsExact ? Word.Of(access.Worst) : $"{Word.Of(access.Worst)} at worst, {Word.Of(access.Best)} at best";
}
