using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>What decides whether a spare is on offer as asked.</summary>
sealed class SpareReasons(TeardownCase source, Part part, Spare spare)
{
    (string, Value) Name => ("part", Shown.Of(part));

    public static Reason NoSpares(TeardownCase source, Part part) => Reason.Of(
        "no-spares", "No spares are on offer, so there is none for {part}.", [Pointer.Root.Child("spares"), source.At(part)], ("part", Shown.Of(part)));

    public static Reason NotListed(TeardownCase source, Part part) => Reason.Of(
        "spare-not-listed", "The record does not say whether there is a spare for {part}.", [source.At(part)], ("part", Shown.Of(part)));

    public Reason OnOffer() => Of(
        "spare-on-offer", "{part}: a spare is on offer to {audience} for {years}, with all fasteners that cannot be used again.",
        ("audience", Shown.Of(spare.Audience)), ("years", Shown.Of(spare.Years, "years")));

    public Reason Audience(string asked) => Of(
        "spare-audience", "{part}: the spare is for {audience}; it has to be on offer to {asked}.", ("audience", Shown.Of(spare.Audience)), ("asked", asked));

    public Reason Years(decimal asked) => Of(
        "spare-years", "{part}: the spare is on offer for {years}; {asked} are asked.", ("years", Shown.Of(spare.Years, "years")), ("asked", Value.Of(asked, "years")));

    public Reason Fasteners(Ways ways, Func<Operation, string> seen) => Of(
        ways.Exists switch { true => "fasteners-supplied", false => "fasteners-not-supplied", _ => "fasteners-unknown" },
        ways.Exists switch
        {
            true => "{part}: all fasteners on the way can be used again or come with the spare.",
            false => "{part}: fasteners that cannot be used again do not come with the spare: {fasteners}.",
            _ => "{part}: it is not known whether fasteners can be used again or come with the spare: {fasteners}.",
        },
        ("fasteners", string.Join(", ", ways.Operations.Select(seen).Where(text => text.Length > 0))));

    public Reason Delivery(decimal first, decimal later) => Of(
        "spare-delivery", "{part}: delivery takes {days}; {first} are allowed in the first five years, {later} after; the record has one number, judged by the first.",
        ("days", Shown.Of(spare.DeliveryDays, "working days")), ("first", Value.Of(first, "working days")), ("later", Value.Of(later, "working days")));

    Reason Of(string code, string template, params ReadOnlySpan<(string, Value)> values) =>
        Reason.Of(code, template, [source.At(spare), source.At(part)], [Name, .. values]);
}
