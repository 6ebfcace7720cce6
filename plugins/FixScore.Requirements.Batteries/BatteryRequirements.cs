using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Regulation (EU) 2023/1542, Article 11: whether portable batteries can be removed and replaced, as far as a teardown record tells.</summary>
/// <remarks>
/// <para>A finding for each rule; with several batteries the worst counts. What the record does not tell is unknown, never met.
/// Nothing applies before 18 February 2027, nor before the release of the model; a release that is not recorded is taken as
/// past. All ways of the record are looked at: one that keeps the rule is enough.</para>
/// <para>Derogations (paragraphs 2 and 3) ask for reasons that no record holds: they are unknown where they matter and could
/// hold, else not applicable; they leave the finding on paragraph 1 as it is. That the battery is portable is taken for
/// granted.</para>
/// <para><b>Not looked at</b>: batteries of light means of transport (paragraph 5), whether a price is reasonable, who is
/// able to do the work. Thread safe.</para>
/// </remarks>
public sealed class BatteryRequirements : IRequirementSet
{
    /// <inheritdoc/>
    public RequirementInfo Info { get; } = new(
        "eu-2023-1542", 1, "EU batteries regulation, removable and replaceable batteries",
        "Regulation (EU) 2023/1542, Articles 11, 95 and 96 (read; consolidated version not noted); guidelines C/2025/214 of 10 January 2025 (read in part)",
        "A screening aid, not legal advice: it tells what a teardown record shows, not whether a product conforms. " +
        "Lithium cells can burn when bent, pierced or heated; local rules and trained staff come first.",
        []);

    /// <inheritdoc/>
    public IEnumerable<Finding> Check(RequirementContext context)
    {
        var batteries = new BatteryDevice(context);
        var outside = BatteryScope.WhyOutside(context);
        return Rules(batteries).Select(requirement => requirement.Finding(outside));
    }

    static IEnumerable<Requirement> Rules(BatteryDevice batteries) =>
    [
        ReadilyRemovable.Of(batteries),
        BatteryInstructions.Of(batteries),
        .. Derogations.Of(batteries),
        ReadilyReplaceable.Of(batteries),
        SpareBatteries.Of(batteries),
        SoftwareBarrier.Of(batteries),
    ];
}
