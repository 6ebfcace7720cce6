using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>Whether a document on a subject is there as the law asks. One that is listed for some parts only leaves the rest open.</summary>
static class Documents
{
    // Annex II B and D 1.1(2), consolidated text of 20 June 2025 (read).
    const decimal Years = 7;

    /// <summary>One question to a document.</summary>
    public delegate Answer Question(EcodesignDevice device, Document document);

    public static Answer Judge(EcodesignDevice device, DocumentSubject subject, params Question[] questions)
    {
        Document[] documents = [.. device.Record.Documentation.Where(document => document.Subject == subject)];
        if (documents.Length > 0)
            return Answer.Any(documents.Select(document => Answer.All(questions.Select(ask => ask(device, document))).WhenMet(DocumentReasons.There(device.Case, document))));
        return device.Record.Documentation is { IsRecorded: true, Count: 0 }
            ? Answer.Of(false, DocumentReasons.NoDocuments(subject))
            : Answer.Unknown(DocumentReasons.NotListed(subject));
    }

    public static Answer IsPublic(EcodesignDevice device, Document document) => Answer.Of(
        document.Audience.Fits(audience => audience is Audience.Public), DocumentReasons.Audience(device.Case, document, "everyone"));

    public static Answer IsForProfessionals(EcodesignDevice device, Document document) => Answer.Of(
        document.Audience.Fits(audience => audience is Audience.Public or Audience.Repairers), DocumentReasons.Audience(device.Case, document, "professional repairers"));

    public static Answer IsFree(EcodesignDevice device, Document document) => Answer.Of(
        document.Cost.Fits(cost => cost is DocumentCost.Free), DocumentReasons.Cost(device.Case, document, "be free"));

    public static Answer HasNoDeterringFee(EcodesignDevice device, Document document) => Answer.Of(
        document.Cost.Fits(cost => cost is not DocumentCost.Fee), DocumentReasons.Cost(device.Case, document, "be free or at a reasonable and proportionate fee"));

    public static Answer StaysLongEnough(EcodesignDevice device, Document document) => Answer.Of(
        document.Years.AtLeast(Years), DocumentReasons.Years(device.Case, document, Years));

    public static Answer OfWholeDevice(EcodesignDevice device, Document document) => Answer.Of(
        document.Parts.IsEmpty ? true : null, DocumentReasons.SomePartsOnly(device.Case, document));

    /// <summary>Whether a document is about a part or about all.</summary>
    public static Question Covers(Part part) => (device, document) => Answer.Of(
        document.Parts.IsEmpty || document.Parts.Any(device.Case.Derive<PartGroups>().Of(part.Id).Holds) ? true : null,
        DocumentReasons.SomePartsOnly(device.Case, document));
}
