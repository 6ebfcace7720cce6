using FixScore.Requirements.Ecodesign.Rules;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign;

/// <summary>Regulation (EU) 2023/1670, Annex II Parts B (smartphones) and D (slate tablets): what can be told from a teardown record.</summary>
/// <remarks>
/// <para>A finding for each rule and, where a rule is about parts, for each listed part role: <c>rule.role</c>. What the
/// record does not tell is unknown, never met; a part role neither in the device nor looked for is unknown as well.</para>
/// <para><b>Dates.</b> Before 20 June 2025 nothing applies, nor before the release of the model. Spares are owed from one month
/// after its release. A release that is not recorded is taken as past, and a model of before that day as still placed on the
/// market, for the law looks at units and a record only at the model. When the last unit is placed on the market is not in a
/// record: years of a spare or document are taken as counted from there.</para>
/// <para><b>Ways.</b> A part is judged by all ways of the record, not by the shortest alone: met when one way keeps the rule,
/// not met when none does even with all that is unknown taken as fitting. Reassembly is taken to ask for no more.</para>
/// <para><b>Not looked at</b>, for a record holds nothing of it: prices (1.1(4)), how registration of repairers goes
/// (1.1(2)), who may be asked to notify or authorise (1.1(7)), delays of updates, durability. Thread safe.</para>
/// </remarks>
public sealed class EcodesignRequirements : IRequirementSet
{
    /// <inheritdoc/>
    public RequirementInfo Info { get; } = new(
        "eu-2023-1670", 1, "EU ecodesign of smartphones and slate tablets",
        "Regulation (EU) 2023/1670 (OJ L 214, 31.8.2023, p. 47), Annex II Parts B and D, consolidated text of 20 June 2025 (read)",
        "A screening aid, not legal advice: it tells what a teardown record shows, not whether a product conforms. " +
        "Units that were placed on the market before 20 June 2025 owe nothing, and a record does not tell when a unit was. " +
        "Rollable displays and high-security smartphones are outside the regulation, which a record does not tell.",
        []);

    /// <inheritdoc/>
    public IEnumerable<Finding> Check(RequirementContext context)
    {
        var device = new EcodesignDevice(context);
        var outside = EcodesignScope.WhyOutside(context);
        return Rules(device).Select(requirement => requirement.Finding(outside));
    }

    static IEnumerable<Requirement> Rules(EcodesignDevice device) =>
    [
        .. SparesToProfessionals.Of(device),
        .. SparesToEndUsers.Of(device),
        SpareBundles.Of(device),
        SparePartsList.Of(device),
        .. RepairInformation.Of(device),
        RepairInformationFees.Of(device),
        .. RepairInstructions.Of(device),
        .. SpareDelivery.Of(device),
        .. PartDisassembly.Of(device),
        BatteryDisassembly.Of(device),
        .. SerialisedParts.Of(device),
        .. SystemUpdates.Of(device),
    ];
}
