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
        '}' or ']' when EndsWithComma(bytes[..offset]) => ("There is a comma before the closing bracket.", "Remove the comma."),
        'N' or 'I' or 'u' => ("This word is no JSON value.", "Leave the member out when the value is not known."),
        '+' or '.' or '0' or '-' => ("This is not how JSON writes a number.", "Write numbers like 0.5, 12 or -3."),
        _ => ("The text is not JSON from here on.", "Look for a missing comma, colon, quote or bracket just before."),
    };

    static bool EndsWithComma(ReadOnlySpan<byte> before) => before.TrimEnd(" \t\r\n"u8) is [.., (byte)','];
}
