using System.Text.Json;

namespace FixScore.Analysis.Generations.Words;

/// <summary>Says a value of a record.</summary>
static class ValueText
{
    const int Longest = 160;

    static readonly string[] Left = ["id", "note", "evidence", "footage"];

    /// <summary>The value of a member, with its unit, shortened where it is long.</summary>
    public static string Of(string member, JsonElement value)
    {
        var text = Plain(value) + (IsNumber(value) ? MemberWords.Unit(member) : "");
        return text.Length <= Longest ? text : text[..(Longest - 1)] + "…";
    }

    /// <summary>What a list of words has more and less than another; <c>null</c> when they share nothing or are no such lists.</summary>
    public static string? Difference(JsonElement old, JsonElement @new)
    {
        if (!IsWords(old) || !IsWords(@new)) return null;
        var (before, after) = (Words(old), Words(@new));
        if (!before.Intersect(after).Any()) return null;
        string[] said = [.. Said("also", after.Except(before)), .. Said("no longer", before.Except(after))];
        return said.Length == 0 ? null : string.Join(", ", said);
    }

    static IEnumerable<string> Said(string how, IEnumerable<string> words) => words.Any() ? [$"{how} {And(words)}"] : [];

    public static string And(IEnumerable<string> words) => words.ToArray() is [.. var first, var last] && first.Length > 0 ? $"{string.Join(", ", first)} and {last}" : string.Concat(words);

    public static string Plain(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => Object(value),
        JsonValueKind.Array when value.GetArrayLength() == 0 => "none",
        JsonValueKind.Array => And(value.EnumerateArray().Select(Plain)),
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        JsonValueKind.String => value.GetString()!,
        _ => value.GetRawText(),
    };

    static string Object(JsonElement value) => value.EnumerateObject().First().Name switch
    {
        "min" or "max" => Range(value),
        "amount" => Price(value),
        "removed" or "away" or "undone" => $"{Plain(value.EnumerateObject().First().Value)} {value.EnumerateObject().First().Name}",
        "anyOf" => string.Join(" or ", value.GetProperty("anyOf").EnumerateArray().Select(Plain)),
        "allOf" => And(value.GetProperty("allOf").EnumerateArray().Select(Plain)),
        _ => Members(value, Left),
    };

    /// <summary>Members with their names.</summary>
    public static string Members(JsonElement value, params string[] without) =>
        string.Join(", ", value.EnumerateObject().Where(member => !without.Contains(member.Name)).Select(member => $"{MemberWords.Label(member.Name)} {Of(member.Name, member.Value)}"));

    static string Price(JsonElement price) =>
        $"{Plain(price.GetProperty("amount"))}{(price.TryGetProperty("currency", out var currency) ? " " + currency.GetString() : "")}"
        + (price.TryGetProperty("taxIncluded", out var tax) ? tax.GetBoolean() ? " with tax" : " without tax" : "");

    static string Range(JsonElement range) => (range.TryGetProperty("min", out var min), range.TryGetProperty("max", out var max)) switch
    {
        (true, true) => $"{Plain(min)} to {Plain(max)}",
        (true, false) => $"at least {Plain(min)}",
        _ => $"at most {Plain(max)}",
    };

    static bool IsNumber(JsonElement value) => value.ValueKind == JsonValueKind.Number || value.ValueKind == JsonValueKind.Object && value.EnumerateObject().First().Name is "min" or "max";

    static bool IsWords(JsonElement value) => value.ValueKind == JsonValueKind.Array && value.EnumerateArray().All(item => item.ValueKind == JsonValueKind.String);

    static string[] Words(JsonElement value) => [.. value.EnumerateArray().Select(item => item.GetString()!)];
}
