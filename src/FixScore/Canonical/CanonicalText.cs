using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace FixScore.Canonical;

/// <summary>Strings after RFC 8785, section 3.2.2.2: escaped is only what JSON demands, in the shortest way.</summary>
internal static class CanonicalText
{
    private static readonly SearchValues<byte> ToEscape =
        SearchValues.Create([.. Enumerable.Range(0, 0x20).Select(n => (byte)n), (byte)'"', (byte)'\\']);

    /// <summary>Writes a string in canonical form, quotes included.</summary>
    /// <param name="source">What stands between the quotes in a well-formed JSON text.</param>
    /// <param name="output">Where to write.</param>
    internal static void Write(ReadOnlySpan<byte> source, IBufferWriter<byte> output)
    {
        if (!Utf8.IsValid(source)) throw new JsonException("A string is not valid UTF-8.");
        output.Write("\""u8);
        // What JSON allows unescaped, RFC 8785 leaves unescaped.
        if (IsEscaped(source)) Escape(Unescape(source), output);
        else output.Write(source);
        output.Write("\""u8);
    }

    internal static bool IsEscaped(ReadOnlySpan<byte> source) => source.Contains((byte)'\\');

    /// <summary>The text that a string stands for, as UTF-8.</summary>
    /// <exception cref="JsonException">A lone surrogate, which has no UTF-8 form.</exception>
    internal static byte[] Unescape(ReadOnlySpan<byte> source)
    {
        // No escape is shorter than what it stands for.
        var text = new byte[source.Length];
        var length = 0;
        while (true)
        {
            var run = source.IndexOf((byte)'\\') is >= 0 and var at ? at : source.Length;
            source[..run].CopyTo(text.AsSpan(length));
            length += run;
            if (run == source.Length) return text[..length];
            source = source[run..];
            length += ReadEscape(ref source).EncodeToUtf8(text.AsSpan(length));
        }
    }

    private static Rune ReadEscape(ref ReadOnlySpan<byte> source)
    {
        if (source[1] == (byte)'u') return ReadUnicode(ref source);
        var letter = (char)source[1];
        source = source[2..];
        return new(letter switch { 'b' => '\b', 'f' => '\f', 'n' => '\n', 'r' => '\r', 't' => '\t', _ => letter });
    }

    private static Rune ReadUnicode(ref ReadOnlySpan<byte> source)
    {
        var first = ReadUnit(ref source);
        if (Rune.TryCreate(first, out var rune)) return rune;
        if (source.StartsWith("\\u"u8) && Rune.TryCreate(first, ReadUnit(ref source), out rune)) return rune;
        throw new JsonException($"The lone surrogate \\u{(int)first:x4} has no UTF-8 form.");
    }

    private static char ReadUnit(ref ReadOnlySpan<byte> source)
    {
        var unit = ushort.Parse(source[2..6], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        source = source[6..];
        return (char)unit;
    }

    private static void Escape(ReadOnlySpan<byte> text, IBufferWriter<byte> output)
    {
        for (int at; (at = text.IndexOfAny(ToEscape)) >= 0; text = text[(at + 1)..])
        {
            output.Write(text[..at]);
            EscapeUnit(text[at], output);
        }

        output.Write(text);
    }

    private static void EscapeUnit(byte unit, IBufferWriter<byte> output)
    {
        switch ((char)unit)
        {
            case '\b': output.Write("\\b"u8); break;
            case '\t': output.Write("\\t"u8); break;
            case '\n': output.Write("\\n"u8); break;
            case '\f': output.Write("\\f"u8); break;
            case '\r': output.Write("\\r"u8); break;
            case '"': output.Write("\\\""u8); break;
            case '\\': output.Write("\\\\"u8); break;
            default:
                output.Write("\\u00"u8);
                output.Write([Hex(unit >> 4), Hex(unit & 0xF)]);
                break;
        }
    }

    private static byte Hex(int digit) => "0123456789abcdef"u8[digit];
}
