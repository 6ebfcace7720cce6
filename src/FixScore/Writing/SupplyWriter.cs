using System.Text.Json;
using FixScore.Records;

namespace FixScore.Writing;

static class SupplyWriter
{
    public static void Document(Utf8JsonWriter json, Document document)
    {
        json.Word<DocumentSubject>("subject", document.Subject);
        json.OneOf("audience", document.Audience);
        json.OneOf("cost", document.Cost);
        json.Quantity("years", document.Years);
        json.Ids("parts", document.Parts);
        json.Remarks(document);
    }

    public static void Spare(Utf8JsonWriter json, Spare spare)
    {
        json.Required("part", spare.Part);
        json.OneOf("audience", spare.Audience);
        json.Quantity("years", spare.Years);
        json.Quantity("deliveryDays", spare.DeliveryDays);
        json.Object("price", spare.Price, RecordWriter.Price);
        json.Ids("onlyBundledWith", spare.OnlyBundledWith);
        Fasteners(json, spare.FastenersIncluded);
        json.Remarks(spare);
    }

    public static void Support(Utf8JsonWriter json, Support support)
    {
        json.Quantity("securityUpdateYears", support.SecurityUpdateYears);
        json.Quantity("correctiveUpdateYears", support.CorrectiveUpdateYears);
        json.Quantity("functionalityUpdateYears", support.FunctionalityUpdateYears);
        json.OneOf("countedFrom", support.CountedFrom);
    }

    static void Fasteners(Utf8JsonWriter json, FastenersIncluded? included)
    {
        if (included is { All: false, Joints.IsDefaultOrEmpty: false }) json.Texts("fastenersIncluded", included.Joints);
        else json.Flag("fastenersIncluded", included?.All);
    }
}
