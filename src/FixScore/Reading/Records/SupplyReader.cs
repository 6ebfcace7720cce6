using System.Text.Json;
using FixScore.Records;

namespace FixScore.Reading.Records;

static class SupplyReader
{
    public static Document Document(ObjectReader document) => document.Entry(new Document
    {
        Subject = document.Word<DocumentSubject>("subject"),
        Audience = document.OneOf<Audience>("audience"),
        Cost = document.OneOf<DocumentCost>("cost"),
        Years = document.Quantity("years"),
        Parts = document.Ids("parts"),
    });

    public static Spare Spare(ObjectReader spare) => spare.Entry(new Spare
    {
        Part = spare.Slug("part"),
        Audience = spare.OneOf<Audience>("audience"),
        Years = spare.Quantity("years"),
        DeliveryDays = spare.Quantity("deliveryDays"),
        Price = spare.Object("price", RecordReader.Price),
        OnlyBundledWith = spare.Ids("onlyBundledWith"),
        FastenersIncluded = Fasteners(spare),
    });

    public static Support Support(ObjectReader support) => new()
    {
        SecurityUpdateYears = support.Quantity("securityUpdateYears"),
        CorrectiveUpdateYears = support.Quantity("correctiveUpdateYears"),
        FunctionalityUpdateYears = support.Quantity("functionalityUpdateYears"),
        CountedFrom = support.OneOf<CountedFrom>("countedFrom"),
    };

    static FastenersIncluded? Fasteners(ObjectReader spare) => spare.KindOf("fastenersIncluded") switch
    {
        JsonValueKind.Array => new(false, spare.Ids("fastenersIncluded")),
        _ => spare.FlagOrNull("fastenersIncluded") is { } all ? new(all, []) : null,
    };
}
