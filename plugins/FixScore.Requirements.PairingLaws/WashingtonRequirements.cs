namespace FixScore.Requirements.PairingLaws;

/// <summary>Washington HB 1483 (2025): what pairing may not do to a replaced part. See <see cref="PairingLawsPlugin"/> for the others of its kind.</summary>
/// <remarks>A finding for each banned effect: <c>blocked-part</c>, <c>reduced-function</c>, <c>misleading-alert</c>. No options.</remarks>
public sealed class WashingtonRequirements : IRequirementSet
{
    // Read in the session law, except which products it is for: that phones, tablets and laptops are among them is from memory.
    static readonly PairingLaw Law = new(
        Article: "HB 1483, session law of 2025; number of the section not noted",
        Start: new(2026, 1, 1),
        AlsoCovered: [],
        NotCovered: [],
        Biometric: BiometricRule.ExceptedWhenStandalone);

    /// <inheritdoc/>
    public RequirementInfo Info { get; } = new(
        "us-wa-hb-1483", 1, "Washington HB 1483, parts pairing",
        "Washington HB 1483, enacted 2025 (read): products first made and sold after 1 January 2026 (read), standalone biometric parts (read); " +
        "phones, tablets and laptops covered (memory); which other products are covered not read",
        PairingLaw.Caution + " Which products this law is for was not read.",
        []);

    /// <inheritdoc/>
    public IEnumerable<Finding> Check(RequirementContext context) => PairingFindings.Of(Law, context);
}
