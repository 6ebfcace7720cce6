using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>What decides about updates of the operating system.</summary>
static class SystemUpdateReasons
{
    static readonly Pointer Support = Pointer.Root.Child("support");

    public static Reason NotRecorded(string kind) =>
        Reason.Of("updates-not-recorded", "The record does not say how long there are {kind} updates.", [Pointer.Root], ("kind", kind));

    public static Reason NotProvided(string kind) =>
        Reason.Of("updates-not-provided", "No {kind} updates are provided, and the law asks for none.", [Support], ("kind", kind));

    public static Reason Years(Support support, string kind, Quantity years, decimal asked) => Of(
        "updates-years", "There are {kind} updates for {years}, counted from {from}; {asked} after end-of-placement are asked.", support, kind, years, asked);

    public static Reason MaybeNotProvided(Support support, string kind, Quantity years, decimal asked) => Of(
        "updates-maybe-none", "There are {kind} updates for {years}, counted from {from}, or none at all; if there are, {asked} after end-of-placement are asked.",
        support, kind, years, asked);

    static Reason Of(string code, string template, Support support, string kind, Quantity years, decimal asked) => Reason.Of(
        code, template, [Support],
        ("kind", kind), ("years", Shown.Of(years, "years")), ("from", Shown.Of(support.CountedFrom)), ("asked", Value.Of(asked, "years")));
}
