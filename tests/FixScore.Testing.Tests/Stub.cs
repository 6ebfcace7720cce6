using FixScore.Records;

namespace FixScore.Testing.Tests;

/// <summary>A device criterion of the share of joints that are reusable; tests replace one thing about it.</summary>
sealed class Stub(CriterionInfo info, Func<DeviceContext, Outcome> judge) : IDeviceCriterion
{
    static readonly Option<Bands> Share = Options.Bands("bands", Bands.Linear((0, 0), (1, 1)), "share", "Share of reusable joints to points.");

    static readonly CriterionInfo GoodInfo = new("acme.reuse", 1, "Reuse", "joints that can be used again", "share",
        Direction.MoreIsBetter, "own judgement, no source", ["joints", "joints[].reuse"], [Share, Options.NoLevel]);

    public static Stub Good { get; } = new(GoodInfo, Reusable);

    public CriterionInfo Info => info;

    public static Stub With(Func<CriterionInfo, CriterionInfo> change) => new(change(GoodInfo), Reusable);

    public static Stub Judging(Func<DeviceContext, Outcome> judge) => new(GoodInfo, judge);

    public static Outcome Points(DeviceContext context, decimal share, params IEnumerable<Pointer> at) =>
        Outcome.Scored(context.Scale.At(share), Reason.Of("share", "{share} of the joints", at, ("share", share)));

    public Outcome Judge(DeviceContext context) => judge(context);

    public static Outcome Reusable(DeviceContext context)
    {
        var joints = context.Case.Record.Joints;
        if (!joints.IsRecorded) return Outcome.Unknown(new Missing(Pointer.Root.Child("joints"), "joints"));
        if (joints.Count == 0) return Outcome.NotApplicable(Reason.Of("no-joints", "Nothing is joined.", []));
        var sure = joints.Where(joint => joint.Reuse.Is(Reuse.Reusable)).ToArray();
        var open = joints.Where(joint => !joint.Reuse.IsExact && joint.Reuse.MayBe(Reuse.Reusable)).ToArray();
        var share = new Interval((decimal)sure.Length / joints.Count, (decimal)(sure.Length + open.Length) / joints.Count);
        return Outcome.Scored(context.Points(Share, share),
            Reason.Of("reusable", "{count} of {all} joints can be used again.", sure.Select(context.Case.At), ("count", sure.Length), ("all", joints.Count)))
            with { Missing = [.. open.Select(joint => new Missing(context.Case.At(joint), "reuse"))] };
    }
}
