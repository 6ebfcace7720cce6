namespace FixScore.Requirements.PairingLaws;

/// <summary>Whether a law is for the device and for the day asked about.</summary>
static class PairingScope
{
    /// <summary>Why it is not, or why that is open; <c>null</c> when it is.</summary>
    public static (FindingStatus Status, Reason Why)? Of(PairingLaw law, RequirementContext context)
    {
        var device = context.Case.Record.Device;
        if (context.Date < law.Start) return (FindingStatus.NotApplicable, PairingScopeReasons.BeforeLaw(law, context.Date));
        if (law.Covers(device.Kind) == false) return (FindingStatus.NotApplicable, PairingScopeReasons.KindNotCovered(device.Kind));
        if (device.Released < law.Start) return (FindingStatus.NotApplicable, PairingScopeReasons.ReleasedBefore(law, device.Released.Value));
        if (device.Released is null) return (FindingStatus.Unknown, PairingScopeReasons.ReleaseUnknown(law));
        // "After" the day; whether a law counts the day itself was not read word by word.
        if (device.Released == law.Start) return (FindingStatus.Unknown, PairingScopeReasons.ReleasedOnTheDay(law));
        return law.Covers(device.Kind) is null ? (FindingStatus.Unknown, PairingScopeReasons.KindOpen(device.Kind)) : null;
    }
}
