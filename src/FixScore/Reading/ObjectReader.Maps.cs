using System.Collections.Immutable;
using System.Text.Json;

namespace FixScore.Reading;

sealed partial class ObjectReader
{
    /// <summary>Reads an object whose member names are data, in the order of the text; a name that stands twice is a problem.</summary>
    public ImmutableArray<KeyValuePair<string, T>> Map<T>(string name, Func<JsonElement, Place, ObjectReader, T> read, bool required = false) =>
        TryGet(name, required, out var value) ? MapValue(value, Member(name), read) : [];

    /// <summary>The same for an object that is the value of a map.</summary>
    public ImmutableArray<KeyValuePair<string, T>> MapValue<T>(JsonElement value, Place at, Func<JsonElement, Place, ObjectReader, T> read)
    {
        if (value.ValueKind == JsonValueKind.Object) return new ObjectReader(value, context, at).Members(read);
        ReportType(at, "an object");
        return [];
    }

    ImmutableArray<KeyValuePair<string, T>> Members<T>(Func<JsonElement, Place, ObjectReader, T> read)
    {
        var members = ImmutableArray.CreateBuilder<KeyValuePair<string, T>>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            var name = member.Name;
            if (seen.Add(name)) members.Add(KeyValuePair.Create(name, read(member.Value, Member(name), this)));
            else context.Error(Pointer.Child(name), "duplicate-member", "'{name}' stands twice.", "Keep one of them.", ("name", name));
        }
        return members.DrainToImmutable();
    }

    /// <summary>A slug that is the value of a map.</summary>
    public string SlugValue(JsonElement value, Place at) => TryText(value, at, Slugs.Check, out var slug) ? slug : "";

    /// <summary>A text of some form that is the value of a map.</summary>
    public string MatchingValue(JsonElement value, Place at, Func<string, bool> matches, string wanted) =>
        TryText(value, at, each => matches(each) ? null : wanted, out var text) ? text : "";

    /// <summary>A number that is the value of a map.</summary>
    public decimal? NumberValue(JsonElement value, Place at) => NumberOf(value, at, negative: true);
}
