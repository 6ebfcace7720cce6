namespace FixScore.Requirements.PairingLaws;

/// <summary>Oregon SB 1596 (2024): what pairing may not do to a replaced part. See <see cref="PairingLawsPlugin"/> for the others of its kind.</summary>
/// <remarks>A finding for each banned effect: <c>blocked-part</c>, <c>reduced-function</c>, <c>misleading-alert</c>. No options.</remarks>
public sealed class OregonRequirements : IRequirementSet
{
    // All from secondary sources (legal and trade press): the text of the law was not read.
    static readonly PairingLaw Law = new(
        Article: "Chapter 69, Oregon Laws 2024; section not read",
        Start: new(2025, 1, 1),
        AlsoCovered: [],
        NotCovered:
        [
            "motor-vehicle", "off-road-vehicle", "farm-equipment", "medical-device", "hvac-equipment", "solar-equipment", "energy-storage",
            "game-console", "electric-toothbrush",
        ],
        Biometric: BiometricRule.NotRead);

    /// <inheritdoc/>
    public RequirementInfo Info { get; } = new(
        "us-or-sb-1596", 1, "Oregon SB 1596, parts pairing",
        "Oregon SB 1596, signed 27 March 2024 (secondary), chapter 69, Oregon Laws 2024: equipment first made and first sold or used after 1 January 2025 (secondary), " +
        "kinds not covered (secondary); phones covered (secondary), tablets and laptops taken as covered (our reading); sections, exceptions and definition of pairing not read",
        PairingLaw.Caution + " The sections of this law and their exceptions were not read.",
        []);

    /// <inheritdoc/>
    public IEnumerable<Finding> Check(RequirementContext context) => PairingFindings.Of(Law, context);
}
