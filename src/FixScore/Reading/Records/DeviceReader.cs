using System.Text.RegularExpressions;
using FixScore.Records;

namespace FixScore.Reading.Records;

static partial class DeviceReader
{
    /// <summary>Stands in where the member is missing, so that the other checks can go on.</summary>
    public static Device NoDevice { get; } = new() { Maker = "", Model = "", Kind = "" };

    /// <summary>Stands in where the member is missing, so that the other checks can go on.</summary>
    public static Assessment NoAssessment { get; } = new() { Assessor = "", Date = default, Units = [] };

    public static Device Device(ObjectReader device) => new()
    {
        Maker = device.Text("maker"),
        Model = device.Text("model"),
        ModelCode = device.TextOrNull("modelCode"),
        Kind = device.Slug("kind"),
        Foldable = device.FlagOrNull("foldable") ?? false,
        Released = device.DateOrNull("released"),
        IngressProtection = device.MatchingOrNull("ingressProtection", IngressCode().IsMatch, "an ingress protection code such as IP68"),
        Price = device.Object("price", RecordReader.Price),
    };

    public static Assessment Assessment(ObjectReader assessment) => new()
    {
        Assessor = assessment.Text("assessor"),
        Date = assessment.Date("date"),
        Units = assessment.Entries("units", Unit, required: true),
    };

    static AssessedUnit Unit(ObjectReader unit) => unit.Entry(new AssessedUnit
    {
        Id = unit.Slug("id"),
        ModelCode = unit.TextOrNull("modelCode"),
        Software = unit.TextOrNull("software"),
        Source = unit.OneOf<UnitSource>("source"),
    });

    // IEC 60529, from memory: IP, a digit to 6 or X for solids, one to 9 or X for water, then letters of two kinds in alphabetical order.
    [GeneratedRegex("^IP[0-6X][0-9X][A-D]?H?M?S?W?\\z", RegexOptions.CultureInvariant)]
    private static partial Regex IngressCode();
}
