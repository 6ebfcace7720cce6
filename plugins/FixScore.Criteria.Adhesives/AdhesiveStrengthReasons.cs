using FixScore.Records;

namespace FixScore.Criteria.Adhesives;

/// <summary>What <see cref="AdhesiveStrengthCriterion"/> says.</summary>
sealed class AdhesiveStrengthReasons(TeardownCase source)
{
    public Reason NoBonds(Part part, decimal points) => Reason.Of(
        "no-bonds", "No recorded adhesive or tape holds part {part} to others.", [source.At(part)], ("part", part.Id)) with { Points = points };

    public IEnumerable<Reason> Of(JudgedBond judged) =>
    [
        ByMeans(judged),
        .. Forces(judged),
        .. judged.Bond.Undoing.SelectMany(operation => AtRisk(judged.Bond, operation)),
        .. Cautions(judged.Bond),
    ];

    public IEnumerable<Missing> Missing(JudgedBond judged)
    {
        if (judged.Points.IsExact) yield break;
        var (bond, acts, at) = (judged.Bond, judged.Means.By, source.At(judged.Bond.Joint));
        if (bond.PeelN is not null && bond.Joint.Adhesive?.WidthMm is null) yield return new(at, "adhesive.widthMm");
        if (bond.ShearN is not null && bond.Joint.Adhesive?.AreaMm2 is null) yield return new(at, "adhesive.areaMm2");
        if (!judged.ByForce && !bond.Effort.OnlyDamage)
            yield return new(at, bond.Loading.Contains(Loading.Peel) ? "adhesive.peelNPer25Mm and widthMm" : "adhesive.shearMPa and areaMm2");
        if (bond.Loading.Length > 1) yield return new(at, "adhesive.type");
        if (bond.Undoing.IsEmpty) yield return new(at, "an operation that undoes it");
        else if (acts.Any(act => act.Means == Means.StretchRelease) && bond.Joint.Adhesive?.Type.IsExact != true) yield return new(at, "adhesive.type");
        foreach (var operation in bond.Undoing.Concat(acts.Select(act => act.By).OfType<Operation>()).Where(operation => !operation.Tools.IsRecorded))
            yield return new(source.At(operation), "tools");
        foreach (var act in acts.Where(act => act is { Means: Means.Heat, HeatC: null, By: not null }))
            yield return new(source.At(act.By!), "a tool with heatC");
    }

    Reason ByMeans(JudgedBond judged)
    {
        var bond = judged.Bond;
        Interval? points = judged.ByForce ? null : judged.Points; // Otherwise the points are said with the force.
        if (bond.Undoing.IsEmpty)
            return Reason.Of("bond-not-opened", "No recorded operation opens bond {bond}.", [source.At(bond.Joint)], ("bond", bond.Joint.Id)) with { Points = points };
        var operations = bond.Undoing.Concat(judged.Means.By.Select(act => act.By).OfType<Operation>()).Select(source.At).Distinct();
        var means = string.Join(" or ", judged.Means.By.Select(act => Word.Of(act.Means)).Distinct());
        var heat = judged.Means.By.Where(act => act.HeatC is not null).Select(act => act.HeatC!.Value).ToArray();
        return heat is [var known]
            ? Reason.Of("bond-heat", "Bond {bond}: the gentlest recorded way to open it takes {means}, at {heat}.",
                [source.At(bond.Joint), .. operations], ("bond", bond.Joint.Id), ("means", means), ("heat", Value.Of(known, "°C"))) with { Points = points }
            : Reason.Of("bond-means", "Bond {bond}: the gentlest recorded way to open it takes {means}.",
                [source.At(bond.Joint), .. operations], ("bond", bond.Joint.Id), ("means", means)) with { Points = points };
    }

    IEnumerable<Reason> Forces(JudgedBond judged)
    {
        Interval? PointsOf(Loading loading) => judged.ByForce && judged.Bond.Loading.Contains(loading) ? judged.Points : null;
        if (judged.Bond.PeelN is { } peel)
            yield return Force("peel-force", "Bond {bond} takes {force} to peel.", judged.Bond.Joint, peel) with { Points = PointsOf(Loading.Peel) };
        if (judged.Bond.ShearN is { } shear)
            yield return Force("shear-force", "Bond {bond} takes {force} to shear.", judged.Bond.Joint, shear) with { Points = PointsOf(Loading.Shear) };
    }

    Reason Force(string code, string template, Joint joint, Interval force) =>
        Reason.Of(code, template, [source.At(joint)], ("bond", joint.Id), ("force", Value.Of(force, "N")));

    IEnumerable<Reason> AtRisk(Bond bond, Operation operation)
    {
        OperationOutcome[] damaged = [.. operation.Outcomes.Where(outcome => outcome.Result.Is(OutcomeResult.Damaged))];
        if (damaged.Length > 0)
            yield return Reason.Of(
                "at-risk", "Opening bond {bond} by {operation} did damage in {damaged} of {tried} recorded tries.",
                [source.At(operation), .. damaged.Select(source.At)],
                ("bond", bond.Joint.Id), ("operation", operation.Id), ("damaged", damaged.Length), ("tried", operation.Outcomes.Length));
    }

    IEnumerable<Reason> Cautions(Bond bond)
    {
        if (bond.HoldsCell && bond.Effort.Recorded.Any(act => act.Means == Means.Heat))
            yield return Caution(
                bond, "caution-heat-on-cell",
                "Bond {bond} holds a lithium cell, and heat is recorded to open it. Discharge the cell first, keep below the limit in the cell "
                + "maker's data sheet, never bend, pierce or pry against it, and have a way to contain a fire. Local rules and licensed practice come first.");
        if (bond.Effort.Recorded.Any(act => act.Means == Means.Solvent))
            yield return Caution(
                bond, "caution-solvent",
                "Solvent is recorded to open bond {bond}. Follow its safety data sheet, ventilate, keep flames, sparks and live circuits away. "
                + "Local rules and licensed practice come first.");
    }

    Reason Caution(Bond bond, string code, string template) =>
        Reason.Of(code, template, [source.At(bond.Joint)], ("bond", bond.Joint.Id));
}
