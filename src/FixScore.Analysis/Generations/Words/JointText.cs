using System.Text.Json;

namespace FixScore.Analysis.Generations.Words;

/// <summary>Says what a joint holds with: <c>4 screws (cross-h, 1.6 x 3 mm)</c>, <c>4 x stretch-release adhesive</c>.</summary>
static class JointText
{
    /// <summary>The members that say what it holds with.</summary>
    public static readonly string[] Members = ["kind", "count", "reuse", "integral", "screw", "adhesive", "connector"];

    static readonly string[] Countable = ["screw", "snap-fit", "connector", "rivet", "magnet", "gasket", "cable-clamp", "weld", "contact"];

    public static string Of(JsonElement joint)
    {
        var kind = ValueText.Plain(joint.GetProperty("kind"));
        var type = Inner(joint, "adhesive", "type") ?? Inner(joint, "connector", "type");
        var details = Details(joint).ToArray();
        return $"{Counted(joint, kind, type)}{(details.Length > 0 ? $" ({string.Join(", ", details)})" : "")}";
    }

    static string Counted(JsonElement joint, string kind, string? type)
    {
        var count = joint.TryGetProperty("count", out var given) ? ValueText.Plain(given) : "1";
        var of = type is null ? "" : type + " ";
        if (count == "1") return of + kind;
        return Countable.Contains(kind) ? $"{count} {of}{kind}s" : $"{count} x {of}{kind}";
    }

    static IEnumerable<string> Details(JsonElement joint)
    {
        if (joint.TryGetProperty("screw", out var screw))
        {
            yield return ValueText.Plain(screw.GetProperty("drive"));
            yield return $"{ValueText.Plain(screw.GetProperty("diameterMm"))} x {ValueText.Plain(screw.GetProperty("lengthMm"))} mm";
        }
        if (joint.TryGetProperty("adhesive", out var adhesive) && ValueText.Members(adhesive, "type") is { Length: > 0 } measured) yield return measured;
        if (joint.TryGetProperty("reuse", out var reuse)) yield return ValueText.Plain(reuse);
        if (joint.TryGetProperty("integral", out var integral) && integral.GetBoolean()) yield return "integral";
    }

    static string? Inner(JsonElement joint, string member, string name) =>
        joint.TryGetProperty(member, out var inner) && inner.TryGetProperty(name, out var value) ? ValueText.Plain(value) : null;
}
