using System.Text;

namespace FixScore.Fuzz.Mutation;

/// <summary>Values that readers trip over.</summary>
static class Words
{
    public static byte[][] Values { get; } =
    [
        .. new[]
        {
            "1e400", "-1e400", "1E-400", "-0", "-0.0", "0", "1", "-1", "0.5", "1e2", "0.1e-30", "1e-28", "1e28", "1e29", "123456789012345678901234567890", "0.123456789012345678901234567891",
            "79228162514264337593543950335", "79228162514264337593543950336", "-79228162514264337593543950335", "0.0000000000000000000000000001", "9999999999999999", "2147483647", "2147483648",
            "-2147483649", "9223372036854775808", "1.0", "01", "+1", ".5", "NaN", "Infinity", "null", "true", "false", "[]", "{}", "[[]]", "[null]", "[1]", "[\"\"]", "{\"\":null}",
            "{\"min\":1,\"max\":0}", "{\"min\":0,\"max\":79228162514264337593543950335}", "{\"min\":1e-28,\"max\":1e28}", "{\"min\":1}", "{\"max\":1}", "{\"min\":0,\"max\":1,\"min\":2}",
            "\"\"", "\" \"", "\"\\ud800\"", "\"\\udc00x\"", "\"\\u0000\"", "\"a\\u0000b\"", "\"\\ufeff\"", "\"\uFEFF\"", "\"\\u202e\"", "\"\\u001b[31m\"", "\"a/b~c\"", "\"~0~1\"", "\"\\n\"", "\"\\r\\n\\t\"",
            "\"@\"", "\"a@b@c\"", "\"bench-balanced@1.0.0\"", "\"unknown\"", "\"2026-02-30\"", "\"0001-01-01\"", "\"9999-12-31\"", "\"2026-01-01\"", "\"../../x\"", "\"{0}{name}\"", "\"1\"", "\"1e400\"", "\"sha256:\"", "\"1.0.0\"",
        }.Select(Encoding.UTF8.GetBytes),
        Nested('[', ']', 62), Nested('[', ']', 70), Members(63), Nested('[', ']', 4000),
        Quoted(new string('a', 300)), Quoted(new string('z', 20_000)), Quoted(string.Concat(Enumerable.Repeat("\U0001F50B", 100))),
        Encoding.UTF8.GetBytes("1" + new string('0', 400)), Encoding.UTF8.GetBytes("0." + new string('0', 400) + "1"),
    ];

    /// <summary>Bytes to put in anywhere.</summary>
    public static byte[][] Bits { get; } =
    [
        [0], [0xFF], [0xC0, 0x80], [0xED, 0xA0, 0x80], [0xEF, 0xBB, 0xBF], [0xE2, 0x80, 0x9C], [0xF4, 0x90, 0x80, 0x80], [.. "\\u"u8], [.. "\\ud800"u8], [.. "//"u8], [.. "'"u8],
        [.. "{"u8], [.. "}"u8], [.. "["u8], [.. "]"u8], [.. "\""u8], [.. ","u8], [.. ":"u8], [.. "\\"u8], [.. "-"u8], [.. "0"u8], [.. "e9"u8], [.. "\n"u8], [.. "\r"u8], [.. "null"u8],
    ];

    static byte[] Quoted(string text) => Encoding.UTF8.GetBytes($"\"{text}\"");

    static byte[] Nested(char open, char close, int deep) => Encoding.UTF8.GetBytes(new string(open, deep) + new string(close, deep));

    static byte[] Members(int deep) => Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("{\"a\":", deep)) + "1" + new string('}', deep));
}
