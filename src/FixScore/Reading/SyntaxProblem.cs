namespace FixScore.Reading;

/// <summary>Says what is wrong where the text stops being JSON, as far as the bytes there show it.</summary>
static class SyntaxProblem
{
    public static Problem At(ReadOnlySpan<byte> bytes, int offset)
    {
        var (text, hint) = offset >= bytes.Length
            ? ("The text ends too early.", "Something is cut off, or a closing bracket is missing.")
            : Describe(bytes, offset);
        return Problem.Of(Severity.Error, Pointer.Root, "json.syntax", text, hint);
    }

    static (string Text, string Hint) Describe(ReadOnlySpan<byte> bytes, int offset) => (char)bytes[offset] switch
    {
        '/' or '#' => ("Comments are not part of JSON.", "Use the member 'note' for remarks."),
        '\'' => ("Text stands in double quotes in JSON.", "Replace ' by \"."),
        '\u00E2' when IsTypographicQuote(bytes[offset..]) => ("Text stands in straight double quotes in JSON.", "Replace the typographic quotes by \"."),
        '}' or ']' when EndsWithComma(bytes[..offset]) => ("There is a comma before the closing bracket.", "Remove the comma."),
        'N' or 'I' or 'u' or 'T' or 'F' => ("This word is no JSON value.", "JSON knows true, false and numbers; leave the member out when the value is not known."),
        _ when IsInNumber(bytes, offset) => ("This is not how JSON writes a number.", "Write numbers like 0.5, 12 or -3."),
        < ' ' => ("A control character stands where JSON allows none.", "In texts write line breaks as \\n and tabs as \\t."),
        _ => ("The text is not JSON from here on.", "Look for a missing comma, colon, quote or bracket just before."),
    };

    static bool IsInNumber(ReadOnlySpan<byte> bytes, int offset)
    {
        var before = bytes[..offset].TrimEnd("0123456789.+-eE"u8);
        return (before.Length < offset || bytes[offset] is (byte)'+' or (byte)'.') && before is [.., var last] && ":,[ \t\r\n"u8.Contains(last);
    }

    static bool EndsWithComma(ReadOnlySpan<byte> before) => before.TrimEnd(" \t\r\n"u8) is [.., (byte)','];

    static bool IsTypographicQuote(ReadOnlySpan<byte> bytes) => bytes is [0xE2, 0x80, >= 0x98 and <= 0x9F, ..];
}
