using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(1)(a): spares of listed parts for professional repairers, for at least 7 years after end of placement, with the fasteners needed.</summary>
static class SparesToProfessionals
{
    public static IEnumerable<Requirement> Of(EcodesignDevice device) => ListedParts.Professionals.Select(role =>
        device.OfSpares($"spares-to-professionals.{role}", "1.1(1)(a)", () => ListedParts.Judge(device, role, part => Judge(device, part))));

    public static Answer Judge(EcodesignDevice device, Part part) =>
        SpareOffer.Judge(device, part, audience => audience is Audience.Public or Audience.Repairers, "professional repairers");
}
