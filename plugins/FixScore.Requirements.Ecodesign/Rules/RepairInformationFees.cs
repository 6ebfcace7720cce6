using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(2): fees for repair information are reasonable and proportionate. Judged on the documents that professionals can have.</summary>
static class RepairInformationFees
{
    public static Requirement Of(EcodesignDevice device) => new("repair-information-fees", device.Article("1.1(2)"), () => Judge(device));

    static Answer Judge(EcodesignDevice device)
    {
        if (!device.Record.Documentation.IsRecorded) return Answer.Unknown(DocumentReasons.NotListed(RepairInformation.MinimumContent[0]));
        Document[] open = [.. device.Record.Documentation.Where(document =>
            RepairInformation.MinimumContent.Contains(document.Subject) && Documents.IsForProfessionals(device, document).Status != FindingStatus.NotMet)];
        var fees = open.Length == 0
            ? Answer.NotApplicable(DocumentReasons.NoneForProfessionals())
            : Answer.All(open.Select(document => Documents.HasNoDeterringFee(device, document))).WhenMet(DocumentReasons.FeesReasonable(device.Case, open));
        return fees.Status == FindingStatus.NotMet || device.Record.Documentation.Count == 0 ? fees : Answer.All([fees, .. NotListed(device)]);
    }

    static IEnumerable<Answer> NotListed(EcodesignDevice device) =>
        RepairInformation.MinimumContent.Where(subject => device.Record.Documentation.All(document => document.Subject != subject))
            .Select(subject => Answer.Unknown(DocumentReasons.NotListed(subject)));
}
