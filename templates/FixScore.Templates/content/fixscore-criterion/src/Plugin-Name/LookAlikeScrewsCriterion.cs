using FixScore;

namespace PluginNamespace;

/// <summary>In how many places a screw can be mistaken for another when the device is put together again.</summary>
/// <remarks>
/// <para>Two screws look alike when one driver turns both and diameter and length differ by no more than <c>toldApartMm</c>, yet
/// are not the same: the wrong one strips the thread, does not hold, or drives into what lies beneath. Measured is the share of
/// places that take such a screw; less is better. A screw entry of the record is a place, however many screws it counts.</para>
/// <para>What is unknown of a screw gives the range of all it can be. Without a list of joints the answer is unknown; without a
/// screw the question does not arise.</para>
/// <para>Source: common practice, no source. Thread safe.</para>
/// </remarks>
public sealed class LookAlikeScrewsCriterion : IDeviceCriterion
{
    /// <inheritdoc/>
    public CriterionInfo Info { get; } = new(
        "plugin-vendor.look-alike-screws", 1, "Look-alike screws", "places whose screw can be mistaken for another", "share",
        Direction.LessIsBetter, "common practice, no source",
        ["joints", "joints[].kind", "joints[].screw.drive", "joints[].screw.diameterMm", "joints[].screw.lengthMm"],
        LookAlikeScrewsOptions.All);

    /// <inheritdoc/>
    public Outcome Judge(DeviceContext context)
    {
        if (!context.Case.Record.Joints.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root, "joints"));
        var facts = LookAlikeScrewsFacts.Of(context.Case.Record.Joints, context.Get(LookAlikeScrewsOptions.ToldApart));
        if (facts.Screws.IsEmpty) return Outcome.NotApplicable(LookAlikeScrewsReasons.NoScrews());
        var reasons = new LookAlikeScrewsReasons(context.Case);
        return Outcome.Scored(context.Points(LookAlikeScrewsOptions.ShareBands, facts.Share), reasons.Of(facts))
            with { Missing = reasons.Missing(facts) };
    }
}
