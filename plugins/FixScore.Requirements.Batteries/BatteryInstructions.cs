using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>Article 11(1): instructions and safety information on taking the battery out stay online. That they come with the product is not in a record.</summary>
static class BatteryInstructions
{
    public static Requirement Of(BatteryDevice batteries) => new("instructions-online", "Art. 11(1)", () => batteries.ForAll(battery => Answer.All(
        Judge(batteries, battery, DocumentSubject.DisassemblyInstructions),
        Judge(batteries, battery, DocumentSubject.SafetyData)).WhenMet(BatteryReasons.DocumentsOnline(battery))));

    static Answer Judge(BatteryDevice batteries, Part battery, DocumentSubject subject)
    {
        Document[] documents = [.. batteries.Record.Documentation.Where(document => document.Subject == subject)];
        if (documents.Length > 0) return Answer.Any(documents.Select(document => Judge(batteries, battery, document)));
        return batteries.Record.Documentation is { IsRecorded: true, Count: 0 }
            ? Answer.Of(false, BatteryReasons.NoDocuments())
            : Answer.Unknown(BatteryReasons.DocumentNotListed(subject));
    }

    static Answer Judge(BatteryDevice batteries, Part battery, Document document) =>
        document.Parts.IsEmpty || document.Parts.Any(batteries.GroupOf(battery).Holds)
            ? Answer.Of(document.Audience.Fits(audience => audience == Audience.Public), BatteryReasons.DocumentAudience(batteries.Case, document))
            : Answer.Unknown(BatteryReasons.DocumentOfOtherParts(batteries.Case, document));
}
