using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Ecodesign.Rules;

/// <summary>1.1(1): which spares there are and how to order them is public on a free website.</summary>
static class SparePartsList
{
    public static Requirement Of(EcodesignDevice device) => device.OfSpares("spare-parts-list", "1.1(1)", () =>
        Documents.Judge(device, DocumentSubject.SparePartsList, Documents.IsPublic, Documents.IsFree, Documents.OfWholeDevice));
}
