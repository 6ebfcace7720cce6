using FixScore.Records;

namespace FixScore.Reading.Records;

static class DeviceReader
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
        IngressProtection = device.MatchingOrNull("ingressProtection", IsIngressCode, "an ingress protection code such as IP68"),
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

    // IEC 60529: IP, a digit or X for solids, one for water, and up to two letters.
    static bool IsIngressCode(string text) =>
        text is ['I', 'P', var solids, var water, .. var letters]
        && IsDigitOrX(solids) && IsDigitOrX(water) && letters.Length <= 2 && letters.All(char.IsAsciiLetterUpper);

    static bool IsDigitOrX(char letter) => char.IsAsciiDigit(letter) || letter == 'X';
}
