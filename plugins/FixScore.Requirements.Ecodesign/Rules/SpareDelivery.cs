using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(3): spares are delivered within 5 working days in the first five years, within 10 in those that remain.</summary>
/// <remarks>A record has one number: it is judged by the first period. A spare that nobody can have is delivered to nobody.</remarks>
static class SpareDelivery
{
    // Annex II B and D 1.1(3), consolidated text of 20 June 2025 (read).
    const decimal FirstYears = 5, LaterYears = 10;

    public static IEnumerable<Requirement> Of(EcodesignDevice device) => ListedParts.All.Select(role =>
        device.OfSpares($"spare-delivery.{role}", "1.1(3)", () => ListedParts.Judge(device, role, part => SpareOffer.OfSpares(device, part, spare => Judge(device, part, spare)))));

    static Answer Judge(EcodesignDevice device, Part part, Spare spare)
    {
        var reasons = new SpareReasons(device.Case, part, spare);
        return spare.Audience.Is(Audience.Nobody)
            ? Answer.Of(false, reasons.Audience("somebody"))
            : Answer.Of(spare.DeliveryDays.AtMost(FirstYears), reasons.Delivery(FirstYears, LaterYears));
    }
}
