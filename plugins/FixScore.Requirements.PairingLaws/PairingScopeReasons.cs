using System.Globalization;

namespace FixScore.Requirements.PairingLaws;

/// <summary>Why a law does not apply, or why that is open.</summary>
static class PairingScopeReasons
{
    static readonly Pointer Device = Pointer.Root.Child("device");

    public static Reason BeforeLaw(PairingLaw law, DateOnly asked) => Reason.Of(
        "before-law", "The ban starts on {start}; asked about is {date}.", [], ("start", Day(law.Start)), ("date", Day(asked)));

    public static Reason KindNotCovered(string kind) => Reason.Of(
        "kind-not-covered", "Devices of kind {kind} are not covered.", [Device.Child("kind")], ("kind", kind));

    public static Reason ReleasedBefore(PairingLaw law, DateOnly released) => Reason.Of(
        "released-before", "The ban is for devices first made and sold after {start}; this model was released on {released}.",
        [Device.Child("released")], ("start", Day(law.Start)), ("released", Day(released)));

    public static Reason ReleaseUnknown(PairingLaw law) => Reason.Of(
        "release-unknown", "The ban is for devices first made and sold after {start}; the release of this model is not recorded.", [Device], ("start", Day(law.Start)));

    public static Reason ReleasedOnTheDay(PairingLaw law) => Reason.Of(
        "released-on-the-day", "The ban is for devices first made and sold after {start}, the very day this model was released.",
        [Device.Child("released")], ("start", Day(law.Start)));

    public static Reason KindOpen(string kind) => Reason.Of(
        "kind-open", "Whether devices of kind {kind} are covered was not read.", [Device.Child("kind")], ("kind", kind));

    /// <summary>Why the scope is open, then what trials show.</summary>
    public static Reason Both(Reason open, Reason shown) => new(
        open.Code, $"{open.Template} {shown.Template}", open.Values.AddRange(shown.Values), open.Pointers.AddRange(shown.Pointers));

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
