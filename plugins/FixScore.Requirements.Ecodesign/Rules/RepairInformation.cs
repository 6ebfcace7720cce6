using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(2)(e): the minimum content of repair information, open to professional repairers for 7 years after end of placement.</summary>
static class RepairInformation
{
    // 1.1(2)(e), consolidated text of 20 June 2025 (read); which subject stands for which item is our reading: a technical
    // manual is disassembly instructions; component and diagnosis data are two subjects; software instructions a reset.
    public static readonly ImmutableArray<DocumentSubject> MinimumContent =
    [
        DocumentSubject.Identification, DocumentSubject.ExplodedView, DocumentSubject.WiringDiagram, DocumentSubject.BoardSchematic,
        DocumentSubject.ToolsList, DocumentSubject.DisassemblyInstructions, DocumentSubject.ErrorCodes, DocumentSubject.ComponentList,
        DocumentSubject.Diagnostics, DocumentSubject.SoftwareReset, DocumentSubject.FailureRecords, DocumentSubject.RepairerRegistration,
    ];

    public static IEnumerable<Requirement> Of(EcodesignDevice device) => MinimumContent.Select(subject =>
        new Requirement($"repair-information.{Word.Of(subject)}", device.Article("1.1(2)(e)"), () =>
            Documents.Judge(device, subject, Documents.IsForProfessionals, Documents.StaysLongEnough, Documents.OfWholeDevice)));
}
