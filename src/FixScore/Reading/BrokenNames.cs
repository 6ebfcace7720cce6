using System.Globalization;
using System.Text.Json;

namespace FixScore.Reading;

/// <summary>Finds member names that hold half of a surrogate pair. JSON allows them (RFC 8259, section 8.2), but no text has them: nothing could ask for such a member or point to it.</summary>
static class BrokenNames
{
    /// <summary>The first one, as a problem of the object around it, with the byte offset of that; <c>null</c> when all names are text.</summary>
    /// <param name="text">A text that is JSON.</param>
    public static (Problem Problem, int Offset)? First(ReadOnlySpan<byte> text)
    {
        // Nearly no text has such escapes.
        if (text.IndexOf("\\ud"u8) < 0 && text.IndexOf("\\uD"u8) < 0) return null;
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = JsonText.MaxDepth });
        var around = new Stack<(Place Place, int Offset)>();
        Place at = Place.Root;
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName when IsBroken(reader.ValueSpan): return (Problem(around.Peek().Place), around.Peek().Offset);
                case JsonTokenType.PropertyName: at = new(around.Peek().Place, reader.GetString()); break;
                case JsonTokenType.StartObject: around.Push((at, (int)reader.TokenStartIndex)); break;
                case JsonTokenType.StartArray:
                    around.Push((at, (int)reader.TokenStartIndex));
                    at = new(at, null, 0);
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray: at = around.Pop().Place.After; break;
                default: at = at.After; break;
            }
        }
        return null;
    }

    static Problem Problem(Place around) => FixScore.Problem.Of(
        Severity.Error, around.Pointer, "lone-surrogate", "The name of a member holds half of a surrogate pair.", "Write the character itself, in UTF-8.");

    static bool IsBroken(ReadOnlySpan<byte> name)
    {
        for (var at = 0; at < name.Length; at++)
        {
            if (name[at] != '\\') continue;
            if (name[at + 1] != 'u')
            {
                at++;
                continue;
            }
            var unit = Unit(name, at);
            at += 5;
            if (!char.IsSurrogate(unit)) continue;
            if (!char.IsHighSurrogate(unit) || !name[(at + 1)..].StartsWith("\\u"u8) || !char.IsLowSurrogate(Unit(name, at + 1))) return true;
            at += 6;
        }
        return false;
    }

    // The reader has seen to it that four hexadecimal digits follow.
    static char Unit(ReadOnlySpan<byte> name, int escape) => (char)ushort.Parse(name.Slice(escape + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
}
