using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>Whether one of a part's spares is on offer as the law asks: to whom, for how long, with which fasteners.</summary>
static class SpareOffer
{
    // Annex II B and D 1.1(1), consolidated text of 20 June 2025 (read).
    public const decimal Years = 7;

    public static Answer Judge(EcodesignDevice device, Part part, Func<Audience, bool> audience, string asked) => OfSpares(device, part, spare =>
    {
        var reasons = new SpareReasons(device.Case, part, spare);
        return Answer.All(
            Answer.Of(spare.Audience.Fits(audience), reasons.Audience(asked)),
            Answer.Of(spare.Years.AtLeast(Years), reasons.Years(Years)),
            SpareFasteners.Judge(device, part, spare)).WhenMet(reasons.OnOffer());
    });

    /// <summary>The best answer of a part's spares; a spare of what is replaced with it is one of its spares.</summary>
    public static Answer OfSpares(EcodesignDevice device, Part part, Func<Spare, Answer> judge)
    {
        var group = device.Case.Derive<PartGroups>().Of(part.Id);
        ImmutableArray<Spare> spares = [.. device.Record.Spares.Where(spare => group.Holds(spare.Part))];
        if (!spares.IsEmpty) return Answer.Any(spares.Select(judge));
        return device.Record.Spares is { IsRecorded: true, Count: 0 }
            ? Answer.Of(false, SpareReasons.NoSpares(device.Case, part))
            : Answer.Unknown(SpareReasons.NotListed(device.Case, part));
    }
}
