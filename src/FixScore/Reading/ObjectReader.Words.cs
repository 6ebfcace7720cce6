using System.Collections.Immutable;
using System.Text.Json;

namespace FixScore.Reading;

sealed partial class ObjectReader
{
    /// <summary>One word of a closed list.</summary>
    public T Word<T>(string name) where T : struct, Enum => WordOrNull<T>(name, true) ?? default;

    public T? WordOrNull<T>(string name, bool required = false) where T : struct, Enum =>
        TryGet(name, required, out var value) && TryWord<T>(value, Member(name), out var word) ? word : null;

    /// <summary>A word of a closed list, or a list of those it may be.</summary>
    public OneOf<T> OneOf<T>(string name, bool required = false) where T : struct, Enum => OneOf<T>(name, TryWord, required);

    /// <summary>A text of an open list, or a list of those it may be.</summary>
    public OneOf<string> OneOfTexts(string name, bool required = false) =>
        OneOf(name, (JsonElement value, Place at, out string text) => TryText(value, at, AnyText, out text), required);

    /// <summary>A list of words of a closed list; not recorded when the member is missing.</summary>
    public ImmutableArray<T> Words<T>(string name) where T : struct, Enum => List<T>(name, TryWord, false, 0);

    OneOf<T> OneOf<T>(string name, ItemReader<T> read, bool required) where T : notnull
    {
        if (!TryGet(name, required, out var value)) return default;
        if (value.ValueKind != JsonValueKind.Array) return read(value, Member(name), out var word) ? word : default(OneOf<T>);
        if (value.GetArrayLength() == 0)
            context.Error(Pointer.Child(name), "too-few", "A list of possible words needs at least one.", "Leave the member out when nothing is known.");
        return new([.. Items(value, Member(name), read).Distinct()]);
    }

    bool TryWord<T>(JsonElement value, Place at, out T word) where T : struct, Enum
    {
        word = default;
        if (value.ValueKind != JsonValueKind.String)
        {
            ReportType(at, "a word");
            return false;
        }
        if (!TryDecode(value, at, out var text)) return false;
        if (FixScore.Word.TryParse(text, out word)) return true;
        context.Error(at.Pointer, "unknown-word", "'{word}' is none of the words known here.", Suggestion.Hint(text, FixScore.Word.All<T>()), ("word", Short(text)));
        return false;
    }
}
