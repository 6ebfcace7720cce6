using System.Text;
using System.Text.Json;
using FixScore.Canonical;

namespace FixScore.Analysis.Assessors;

/// <summary>A place in a record as JSON.</summary>
sealed class RecordNode(JsonElement element, Pointer at)
{
    // What entries of a list without ids are about; the first that an entry has names it.
    static readonly string[] Names = ["id", "part", "subject", "name", "function", "unit", "topic"];

    public Pointer At => at;

    public bool IsObject => element.ValueKind == JsonValueKind.Object;

    public bool IsListOfEntries => element.ValueKind == JsonValueKind.Array && element.EnumerateArray().All(item => item.ValueKind == JsonValueKind.Object);

    /// <summary>Canonical text; lists of words in ordinal order, unless their order counts.</summary>
    public string Text => IsSetOfWords
        ? $"[{string.Join(',', element.EnumerateArray().Select(Canonical).Order(StringComparer.Ordinal))}]"
        : Canonical(element);

    bool IsSetOfWords => element.ValueKind == JsonValueKind.Array && !at.Text.EndsWith("/operations", StringComparison.Ordinal)
        && element.EnumerateArray().All(item => item.ValueKind == JsonValueKind.String);

    /// <summary>Members by name, or entries by what names them; a name that stands again gets its number.</summary>
    public Dictionary<string, RecordNode> Children()
    {
        if (IsObject) return element.EnumerateObject().ToDictionary(member => member.Name, member => new RecordNode(member.Value, at.Child(member.Name)), StringComparer.Ordinal);
        var entries = new Dictionary<string, RecordNode>(StringComparer.Ordinal);
        foreach (var (index, item) in element.EnumerateArray().Index())
        {
            var (name, key) = (NameOf(item), NameOf(item));
            for (var again = 2; !entries.TryAdd(key, new(item, at.Child(index))); again++) key = $"{name} {again}";
        }
        return entries;
    }

    static string NameOf(JsonElement entry)
    {
        foreach (var name in Names)
            if (entry.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String) return value.GetString()!;
        return "entry";
    }

    static string Canonical(JsonElement element) => Encoding.UTF8.GetString(CanonicalJson.ToBytes(element));
}
