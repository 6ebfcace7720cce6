using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(2): instructions to repair and maintain parts of list (c) are public and free for 7 years after end of placement.</summary>
static class RepairInstructions
{
    public static IEnumerable<Requirement> Of(EcodesignDevice device) => ListedParts.EndUsers.Select(role =>
        new Requirement($"repair-instructions.{role}", device.Article("1.1(2)"), () => ListedParts.Judge(device, role, part => Judge(device, part))));

    static Answer Judge(EcodesignDevice device, Part part) => ListedParts.UnlessLasting(
        device, part,
        Documents.Judge(device, DocumentSubject.DisassemblyInstructions, Documents.IsPublic, Documents.IsFree, Documents.StaysLongEnough, Documents.Covers(part)),
        lasts => Answer.NotApplicable(lasts.Why));
}
