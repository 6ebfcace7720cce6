using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>What decides about a serialised part.</summary>
sealed class SerialisedReasons(TeardownCase source, Part part)
{
    public Reason Inert() => Of("inert", "{part} cannot carry a code.");

    public Reason NotRecorded() => Of("serialisation-unknown", "The record does not say whether {part} has to be notified or authorised when it is replaced.");

    public Reason NotSerialised() => Of("not-serialised", "{part} needs neither notification nor authorisation.");

    public Reason Access() => Of(
        "serialised-access", "{part}: {audience} get the means within {days}; notification {notify}, authorisation {authorise}.",
        ("audience", Shown.Of(part.Serialised!.Audience)), ("days", Shown.Of(part.Serialised.AccessDays, "working days")),
        ("notify", Shown.Of(part.Serialised.Notify)), ("authorise", Shown.Of(part.Serialised.Authorise)));

    public Reason Days(decimal asked) => Of(
        "serialised-days", "{part}: access to the means takes {days}; {asked} are allowed.",
        ("days", Shown.Of(part.Serialised!.AccessDays, "working days")), ("asked", Value.Of(asked, "working days")));

    public Reason Audience(string asked) => Of(
        "serialised-audience", "{part}: the means are for {audience}; they have to be for {asked}.",
        ("audience", Shown.Of(part.Serialised!.Audience)), ("asked", asked));

    Reason Of(string code, string template, params ReadOnlySpan<(string, Value)> values) =>
        Reason.Of(code, template, [source.At(part)], [("part", Shown.Of(part)), .. values]);
}
