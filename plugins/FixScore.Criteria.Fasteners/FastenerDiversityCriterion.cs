namespace FixScore.Criteria.Fasteners;

/// <summary>How many types of screw a repairer has to tell apart.</summary>
/// <remarks>
/// <para>Two screws are of one type when drive, diameter and length agree. The types are weighted by how many screws there
/// are: (sum n)^2 / sum n^2, the Hill number of order 2. It is 1 when all are alike, S when there are S types in equal
/// numbers, and in between when a few odd ones stand beside many of a kind. Less is better.</para>
/// <para>What was not observed gives the range of all it can be (see <see cref="EffectiveTypes"/>). A device whose recorded
/// joints hold no screw has the top of the scale; without recorded joints the answer is unknown. Screws of integral joints
/// are left out: nobody undoes them. Whether a drive follows a published standard, and screws that differ in length alone,
/// are said as reasons without points.</para>
/// <para>Source: M. O. Hill, "Diversity and evenness: a unifying notation and its consequences", Ecology 54 (1973) 427-432;
/// the use for screws and the points are own judgement. Thread safe.</para>
/// </remarks>
public sealed class FastenerDiversityCriterion : IDeviceCriterion, IDesignAdvisor
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "fastener-diversity", 1, "Fastener diversity", "effective number of screw types, weighted by count", "types",
        Direction.LessIsBetter,
        "Hill, Ecology 54 (1973) 427-432: diversity of order 2; its use for screws and the points: own judgement, no source",
        ["joints[].kind", "joints[].count", "joints[].integral", "joints[].screw.drive", "joints[].screw.diameterMm", "joints[].screw.lengthMm"],
        FastenerDiversityOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        if (!context.Case.Record.Joints.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "joints"));
        var facts = FastenerDiversityFacts.Of(context.Case.Record);
        var reasons = new FastenerDiversityReasons(context.Case);
        if (facts.Types.IsEmpty) return Outcome.Scored(context.Scale.Max, reasons.NoScrews(context.Scale.Max));
        var points = context.Points(FastenerDiversityOptions.Bands, facts.Effective);
        if (facts.MayBeNone) points = points.Hull(context.Scale.Max);
        return Outcome.Scored(points, [reasons.Diversity(facts, points), .. reasons.Drives(facts), .. reasons.AlikeButForLength(facts)]) with
        {
            Missing = reasons.Missing(facts),
        };
    }

    /// <inheritdoc/>
    public IEnumerable<DesignChange> Suggest(DeviceContext context) => FastenerDiversityChanges.Of(context);
}
