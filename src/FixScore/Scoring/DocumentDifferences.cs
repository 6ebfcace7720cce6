using System.Text.Json;

namespace FixScore.Scoring;

/// <summary>Walks two score documents side by side.</summary>
static class DocumentDifferences
{
    static readonly string[] TextMembers = ["text", "title", "what"];

    public static IEnumerable<Difference> Between(JsonElement given, JsonElement computed)
    {
        var found = Walk(given, computed, Pointer.Root).ToArray();
        // The digest follows the rest: alone it says that the document was altered in a way that its members do not show.
        var only = found.Length == 1;
        return found.Select(each => each.At.Text == "/digest" ? each with { Counts = only } : each);
    }

    static IEnumerable<Difference> Walk(JsonElement given, JsonElement computed, Pointer at)
    {
        if (given.ValueKind != computed.ValueKind) return [Differs(given, computed, at)];
        return given.ValueKind switch
        {
            JsonValueKind.Object => Members(given, computed, at),
            JsonValueKind.Array => Elements(given, computed, at),
            _ => JsonElement.DeepEquals(given, computed) ? [] : [Differs(given, computed, at)],
        };
    }

    static IEnumerable<Difference> Members(JsonElement given, JsonElement computed, Pointer at)
    {
        foreach (var member in computed.EnumerateObject())
        {
            var child = at.Child(member.Name);
            if (!given.TryGetProperty(member.Name, out var value)) yield return Differs(default, member.Value, child);
            else
                foreach (var difference in Walk(value, member.Value, child)) yield return difference;
        }
        foreach (var member in given.EnumerateObject())
            if (!computed.TryGetProperty(member.Name, out _) && at.Child(member.Name) is { Text: not "/$schema" } child)
                yield return Differs(member.Value, default, child);
    }

    static IEnumerable<Difference> Elements(JsonElement given, JsonElement computed, Pointer at)
    {
        var (left, right) = (given.GetArrayLength(), computed.GetArrayLength());
        for (var i = 0; i < Math.Min(left, right); i++)
            foreach (var difference in Walk(given[i], computed[i], at.Child(i))) yield return difference;
        for (var i = right; i < left; i++) yield return Differs(given[i], default, at.Child(i));
        for (var i = left; i < right; i++) yield return Differs(default, computed[i], at.Child(i));
    }

    static Difference Differs(JsonElement given, JsonElement computed, Pointer at) =>
        new(at, Text(given), Text(computed), !IsVersionOrText(at.Text.Split('/')));

    static bool IsVersionOrText(string[] steps) => steps switch
    {
        ["", "kernel", "version"] => true,
        ["", "plugins", _, "version" or "digest"] or ["", "plugins", _, "dependencies", ..] => true,
        ["", "notes", _] => true,
        ["", "gates", _, "reason"] => true,
        ["", "readings", _, "point" or "taken"] => true,
        ["", "nodes" or "readings", .., var last] => Array.IndexOf(TextMembers, last) >= 0 && steps[^2] != "values" && steps[^2] != "options",
        _ => false,
    };

    static string Text(JsonElement element) => element.ValueKind == JsonValueKind.Undefined ? "" : element.GetRawText();
}
