using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(1)(c): spares of listed parts for professional repairers and end users; a lasting battery may be kept for professionals.</summary>
static class SparesToEndUsers
{
    public static IEnumerable<Requirement> Of(EcodesignDevice device) => ListedParts.EndUsers.Select(role =>
        device.OfSpares($"spares-to-end-users.{role}", "1.1(1)(c)", () => ListedParts.Judge(device, role, part => Judge(device, part))));

    static Answer Judge(EcodesignDevice device, Part part) => ListedParts.UnlessLasting(
        device, part,
        SpareOffer.Judge(device, part, audience => audience is Audience.Public, "professional repairers and end users"),
        lasts => Answer.All(SparesToProfessionals.Judge(device, part)).WhenMet(lasts.Why));
}
