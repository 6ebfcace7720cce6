using System.Collections.Immutable;

namespace FixScore.Requirements.PairingLaws;

/// <summary>What one law says, as data.</summary>
/// <param name="Article">Where the ban stands; says plainly what was not read.</param>
/// <param name="Start">Only devices that came on the market after this day are covered, and nobody is bound before it.</param>
/// <param name="AlsoCovered">Kinds covered besides phones, tablets and laptops.</param>
/// <param name="NotCovered">Kinds that the law leaves out.</param>
/// <param name="Biometric">What the law allows for biometric parts.</param>
sealed record PairingLaw(
    string Article, DateOnly Start, ImmutableArray<string> AlsoCovered, ImmutableArray<string> NotCovered, BiometricRule Biometric)
{
    public const string Caution =
        "A screening aid, not legal advice. The release of the model stands for when it was first made and sold. " +
        "An alert that stays on a working part is read as misleading; the record does not hold its words.";

    static readonly ImmutableArray<string> EverywhereCovered = ["smartphone", "slate-tablet", "laptop"];

    /// <summary>Whether the law is for such a kind; <c>null</c> when that was not read.</summary>
    public bool? Covers(string kind) =>
        NotCovered.Contains(kind) ? false : EverywhereCovered.Contains(kind) || AlsoCovered.Contains(kind) ? true : null;
}
