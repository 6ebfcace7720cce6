namespace FixScore.Requirements.PairingLaws;

/// <summary>Colorado HB24-1121 (2024): what pairing may not do to a replaced part. See <see cref="PairingLawsPlugin"/> for the others of its kind.</summary>
/// <remarks>A finding for each banned effect: <c>blocked-part</c>, <c>reduced-function</c>, <c>misleading-alert</c>. No options.</remarks>
public sealed class ColoradoRequirements : IRequirementSet
{
    // All read in the summary of the legislature and in C.R.S. 6-1-1502 and 6-1-1503, except which words of `kind` stand for a kind: our reading.
    static readonly PairingLaw Law = new(
        Article: "C.R.S. 6-1-1502 and 6-1-1503; number of the paragraph not noted",
        Start: new(2026, 1, 1),
        AlsoCovered: ["powered-wheelchair"],
        NotCovered:
        [
            "marine-equipment", "boat", "aviation-equipment", "aircraft", "motor-vehicle", "medical-device", "safety-equipment", "security-equipment",
            "construction-equipment", "energy-equipment", "game-console",
        ],
        Biometric: BiometricRule.ExceptedWhenStandalone);

    /// <inheritdoc/>
    public RequirementInfo Info { get; } = new(
        "us-co-hb24-1121", 1, "Colorado HB24-1121, parts pairing",
        "Colorado HB24-1121, enacted 28 May 2024 (read), C.R.S. 6-1-1502 and 6-1-1503: equipment first made and sold or used after 1 January 2026 (read), " +
        "kinds not covered (read), standalone biometric parts (read); phones, tablets and laptops taken as covered (our reading)",
        PairingLaw.Caution,
        []);

    /// <inheritdoc/>
    public IEnumerable<Finding> Check(RequirementContext context) => PairingFindings.Of(Law, context);
}
