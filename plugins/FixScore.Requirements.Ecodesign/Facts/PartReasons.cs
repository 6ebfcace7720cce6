using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>Whether a part is one that the regulation lists.</summary>
static class PartReasons
{
    public static Reason Absent(string role) =>
        Reason.Of("part-absent", "The device has no {role}.", [Pointer.Root.Child("absent")], ("role", role));

    public static Reason NotRecorded(string role) =>
        Reason.Of("part-not-recorded", "The record names no {role} and does not say that there is none.", [Pointer.Root.Child("parts")], ("role", role));

    public static Reason NotFoldable(string role) =>
        Reason.Of("not-foldable", "{role} is listed for foldable devices; this one is not.", [Pointer.Root.Child("device")], ("role", role));

    public static Reason ChargerOpen(Reason why) => Reason.Of(
        "charger-standard-unknown",
        "{why} None is owed with a device that meets Article 3(4) of Directive 2014/53/EU, which the record does not tell.",
        why.Pointers, ("why", why.Text));

    public static Reason Cover(TeardownCase source, Part cover, Part battery, Ways ways) => Reason.Of(
        ways.Exists == true ? "cover-stays" : "cover-comes-off",
        ways.Exists == true ? "{part} need not come off to replace {battery}." : "{part} has to come off to replace {battery}.",
        [source.At(cover), source.At(battery), .. ways.Operations.Select(source.At)],
        ("part", Shown.Of(cover)), ("battery", Shown.Of(battery)));
}
