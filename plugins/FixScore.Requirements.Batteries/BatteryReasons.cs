using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>What decides about a battery, apart from the way to it.</summary>
static class BatteryReasons
{
    static readonly Pointer Documentation = Pointer.Root.Child("documentation");

    public static Reason Absent() => Reason.Of("no-battery", "The device has no battery.", [Pointer.Root.Child("absent")]);

    public static Reason NotRecorded() =>
        Reason.Of("battery-not-recorded", "The record names no battery and does not say that there is none.", [Pointer.Root.Child("parts")]);

    public static Reason Interplay(Reason why) => why with
    {
        Template = why.Template + " Regulation (EU) 2023/1670 has a battery rule of its own for this kind of device; which of the two goes first is a legal question.",
    };

    public static Reason ReplacedTogether(TeardownCase source, Part battery, IEnumerable<Part> others) => Reason.Of(
        "replaced-together", "{part} comes out only as one with {others}.",
        others.Prepend(battery).Select(source.At), ("part", Shown.Of(battery)), ("others", string.Join(", ", others.Select(Shown.Of))));

    public static Reason NoDocuments() => Reason.Of("no-documents", "There are no documents.", [Documentation]);

    public static Reason DocumentNotListed(DocumentSubject subject) =>
        Reason.Of("document-not-listed", "The record does not say whether there is a document on {subject}.", [Pointer.Root], ("subject", Word.Of(subject)));

    public static Reason DocumentAudience(TeardownCase source, Document document) => Reason.Of(
        "document-audience", "{subject}: the document is for {audience}; it has to stay online for everyone.",
        [source.At(document)], ("subject", Word.Of(document.Subject)), ("audience", Shown.Of(document.Audience)));

    public static Reason DocumentOfOtherParts(TeardownCase source, Document document) => Reason.Of(
        "document-of-other-parts", "{subject}: the document is about {parts} only.",
        [source.At(document)], ("subject", Word.Of(document.Subject)), ("parts", string.Join(", ", document.Parts)));

    public static Reason DocumentsOnline(Part battery) =>
        Reason.Of("documents-online", "Instructions and safety information for {part} are public.", [Documentation], ("part", Shown.Of(battery)));

    public static Reason NoSpares() => Reason.Of("no-spares", "No spares are on offer.", [Pointer.Root.Child("spares")]);

    public static Reason SpareNotListed(TeardownCase source, Part battery) =>
        Reason.Of("spare-not-listed", "The record does not say whether there is a spare for {part}.", [source.At(battery)], ("part", Shown.Of(battery)));

    public static Reason SpareAudience(TeardownCase source, Part battery, Spare spare) => Reason.Of(
        "spare-audience", "{part}: the spare is for {audience}; it has to be on offer to independent professionals and end users.",
        [source.At(spare), source.At(battery)], ("part", Shown.Of(battery)), ("audience", Shown.Of(spare.Audience)));

    public static Reason SpareYears(TeardownCase source, Part battery, Spare spare, decimal asked) => Reason.Of(
        "spare-years", "{part}: the spare is on offer for {years}; {asked} are asked. Whether its price is reasonable is not judged.",
        [source.At(spare), source.At(battery)], ("part", Shown.Of(battery)), ("years", Shown.Of(spare.Years, "years")), ("asked", Value.Of(asked, "years")));

    public static Reason NotNeeded(Reason why) =>
        Reason.Of("not-needed", "No derogation is needed. {why}", why.Pointers, ("why", why.Text));

    public static Reason NotOfKind(string kind) => Reason.Of(
        "kind-without-derogation", "Devices of kind {kind} are not what the derogation is for.", [Pointer.Root.Child("device").Child("kind")], ("kind", kind));

    public static Reason DerogationOpen(string what) =>
        Reason.Of("derogation-unknown", "A record does not tell whether {what}.", [Pointer.Root.Child("device")], ("what", what));
}
