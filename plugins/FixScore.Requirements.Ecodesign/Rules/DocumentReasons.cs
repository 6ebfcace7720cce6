using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>What decides whether a document is there as asked.</summary>
static class DocumentReasons
{
    public static Reason NoDocuments(DocumentSubject subject) =>
        Reason.Of("no-documents", "There are no documents, so none on {subject}.", [Pointer.Root.Child("documentation")], ("subject", Word.Of(subject)));

    public static Reason NotListed(DocumentSubject subject) =>
        Reason.Of("document-not-listed", "The record does not say whether there is a document on {subject}.", [Pointer.Root], ("subject", Word.Of(subject)));

    public static Reason There(TeardownCase source, Document document) => Of(
        source, document, "document-there", "{subject}: for {audience}, cost {cost}, for {years}.",
        ("audience", Shown.Of(document.Audience)), ("cost", Shown.Of(document.Cost)), ("years", Shown.Of(document.Years, "years")));

    public static Reason Audience(TeardownCase source, Document document, string asked) => Of(
        source, document, "document-audience", "{subject}: the document is for {audience}; it has to be for {asked}.",
        ("audience", Shown.Of(document.Audience)), ("asked", asked));

    public static Reason Cost(TeardownCase source, Document document, string asked) => Of(
        source, document, "document-cost", "{subject}: the cost is {cost}; it has to {asked}.", ("cost", Shown.Of(document.Cost)), ("asked", asked));

    public static Reason Years(TeardownCase source, Document document, decimal asked) => Of(
        source, document, "document-years", "{subject}: it stays available for {years}; {asked} are asked.",
        ("years", Shown.Of(document.Years, "years")), ("asked", Value.Of(asked, "years")));

    public static Reason SomePartsOnly(TeardownCase source, Document document) => Of(
        source, document, "document-of-some-parts", "{subject}: the document is about {parts} only; the rest is not known.", ("parts", string.Join(", ", document.Parts)));

    public static Reason NoneForProfessionals() => Reason.Of(
        "none-for-professionals", "No document of the minimum content is for professional repairers, so none has a fee.", [Pointer.Root.Child("documentation")]);

    public static Reason FeesReasonable(TeardownCase source, IEnumerable<Document> documents) => Reason.Of(
        "fees-reasonable", "No document of the minimum content has a deterring fee.", documents.Select(source.At));

    static Reason Of(TeardownCase source, Document document, string code, string template, params ReadOnlySpan<(string, Value)> values) =>
        Reason.Of(code, template, [source.At(document)], [("subject", Word.Of(document.Subject)), .. values]);
}
