using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Requirements.PairingLaws;

/// <summary>What a law allows for biometric parts used for authentication.</summary>
enum BiometricRule
{
    /// <summary>One that is replaced by itself may be paired; one bundled into a commonly replaced part may not.</summary>
    ExceptedWhenStandalone,

    /// <summary>Whether there is an exception was not read.</summary>
    NotRead,
}

/// <summary>Biometric parts among what is replaced together.</summary>
static class Biometrics
{
    const string Sensor = "fingerprint-sensor";

    // "Such as screen, keyboard, port, battery" (Washington HB 1483, read); taken for Colorado's "standalone" as well.
    static readonly ImmutableArray<string> CommonlyReplaced = [Roles.DisplayAssembly, "keyboard", "charging-port", Roles.Battery];

    /// <summary>What a law makes of what was shown: its exception may lift it, or leave it open.</summary>
    public static Shown Under(BiometricRule rule, PartEffect effect)
    {
        if (effect.Shown == Shown.Cleared || !effect.Parts.Any(part => part.Role == Sensor)) return effect.Shown;
        var others = effect.Parts.Where(part => part.Role != Sensor).ToArray();
        return rule switch
        {
            BiometricRule.ExceptedWhenStandalone when others.Length == 0 => Shown.Excepted,
            BiometricRule.ExceptedWhenStandalone when others.Any(part => CommonlyReplaced.Contains(part.Role)) => effect.Shown,
            _ => effect.Shown < Shown.Unsettled ? Shown.ExceptionOpen : effect.Shown,
        };
    }
}
