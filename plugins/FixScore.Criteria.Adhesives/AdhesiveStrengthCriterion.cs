using System.Collections.Immutable;

namespace FixScore.Criteria.Adhesives;

/// <summary>What it takes to open the bonds that hold a part: its worst bond counts.</summary>
/// <remarks>
/// <para>Bonds are joints of kind adhesive or tape that hold the part's group, with what rides on it, to other parts. A bond
/// counts by the gentlest of the recorded disassembly operations that undo it, each by the harshest means it needs: damage,
/// heat, solvent, a tool, pulling on a stretch-release strip, bare hands. An operation needs heat or solvent as well when it
/// follows one that heats or dissolves, directly or named in <c>after</c>. Gentler is better.</para>
/// <para>Points by means are an assumption: a bond may hold more or less than its like, so they may be off by option
/// <c>tolerance</c> either way. A measured force decides within that: peel strength times width for tapes, foams and strips,
/// lap shear strength times area for what is rigid (hot melt, cured, structural and the like). A bond that opens only with damage has no tolerance, whatever its force. Of several alike (<c>count</c>) one is judged.</para>
/// <para>Unknown tools, temperatures and adhesive types give the range of all they can be; a bond that no recorded operation
/// undoes the range of all levels. A tool without <c>heatC</c> or <c>solvent</c> does neither. A part that is described but
/// not bonded has the top of the scale; one of which the record says nothing, or a record without joints, is unknown.</para>
/// <para>Source: ISO 29862 and ASTM D3330 for peel, ISO 4587 for lap shear; levels and bands are own judgement. Thread safe.</para>
/// </remarks>
public sealed class AdhesiveStrengthCriterion : IPartCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "adhesive-strength", 1, "Adhesive strength", "what it takes to open the worst bond of a part: means, and force where measured", "N",
        Direction.LessIsBetter,
        "Peel: ISO 29862, ASTM D3330; lap shear: ISO 4587; levels and bands: own judgement, no source",
        [
            "joints[].kind", "joints[].adhesive.type", "joints[].adhesive.peelNPer25Mm", "joints[].adhesive.widthMm",
            "joints[].adhesive.shearMPa", "joints[].adhesive.areaMm2", "operations[].undoes", "operations[].tools", "operations[].orTools",
            "operations[].after", "operations[].directlyAfter", "operations[].damages", "operations[].outcomes",
            "tools[].heatC", "tools[].solvent", "parts[].on", "parts[].hazards",
        ],
        AdhesiveStrengthOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(PartContext context)
    {
        if (!context.Case.Record.Joints.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "joints"));
        var facts = AdhesiveStrengthFacts.Of(context.Case, context.Part);
        var reasons = new AdhesiveStrengthReasons(context.Case);
        if (!facts.IsDescribed) return Outcome.Unknown(new Missing(context.Case.At(context.Part), "joints that hold it"));
        if (facts.Bonds.IsEmpty) return Outcome.Scored(context.Scale.Max, reasons.NoBonds(context.Part, context.Scale.Max));
        ImmutableArray<JudgedBond> bonds = [.. facts.Bonds.Select(bond => JudgedBond.Of(context, bond))];
        var worst = new Interval(bonds.Min(bond => bond.Points.Low), bonds.Min(bond => bond.Points.High));
        return Outcome.Scored(worst, [.. bonds.SelectMany(reasons.Of)]) with { Missing = [.. bonds.SelectMany(reasons.Missing).Distinct()] };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => AdhesiveStrengthChanges.Of(context);
}
