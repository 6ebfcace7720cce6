namespace FixScore.Analysis.Generations.Words;

/// <summary>What members of a record are called in a sentence, and the unit of their numbers.</summary>
static class MemberWords
{
    static readonly Dictionary<string, (string Label, string Unit)> Known = new(StringComparer.Ordinal)
    {
        ["diameterMm"] = ("diameter", "mm"),
        ["lengthMm"] = ("length", "mm"),
        ["peelNPer25Mm"] = ("peel force", "N per 25 mm"),
        ["shearMPa"] = ("shear strength", "MPa"),
        ["widthMm"] = ("width", "mm"),
        ["areaMm2"] = ("area", "mm²"),
        ["softensAtC"] = ("softens at", "°C"),
        ["heatC"] = ("heat", "°C"),
        ["seconds"] = ("time", "s"),
        ["waitSeconds"] = ("waiting", "s"),
        ["reassemblySeconds"] = ("time to put back", "s"),
        ["deliveryDays"] = ("delivery", "days"),
        ["accessDays"] = ("access", "days"),
        ["waitDays"] = ("waiting", "days"),
        ["securityUpdateYears"] = ("security updates", "years"),
        ["correctiveUpdateYears"] = ("corrective updates", "years"),
        ["functionalityUpdateYears"] = ("functionality updates", "years"),
        ["on"] = ("rides on", ""),
        ["orTools"] = ("or with tools", ""),
    };

    // Names of members that only hold others say nothing in a sentence.
    static readonly string[] Silent = ["specs", "value", "amount"];

    public static string Label(IEnumerable<string> path)
    {
        var told = path.Where(name => !Silent.Contains(name)).Select(Label).ToArray();
        return string.Join(' ', told.Length > 0 ? told : path.Select(Label));
    }

    public static string Label(string member) => Known.TryGetValue(member, out var words) ? words.Label : Split(member);

    /// <summary>The unit, with a blank before it; empty for none.</summary>
    public static string Unit(string member) => Known.TryGetValue(member, out var words) && words.Unit.Length > 0 ? " " + words.Unit : "";

    // 'suppliedWith' reads 'supplied with'.
    static string Split(string name) => string.Concat(name.Select(letter => char.IsAsciiLetterUpper(letter) ? $" {char.ToLowerInvariant(letter)}" : $"{letter}"));
}
