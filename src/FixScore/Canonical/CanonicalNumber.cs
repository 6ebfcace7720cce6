using System.Buffers;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace FixScore.Canonical;

/// <summary>Numbers after RFC 8785, section 3.2.2.3: as ECMAScript writes them (ECMA-262, Number::toString).</summary>
internal static class CanonicalNumber
{
    // ECMA-262: the point may stand from five zeros before the first digit to the 21st digit; else an exponent.
    private const int LeastPoint = -5;
    private const int GreatestPoint = 21;

    /// <summary>Writes a number as the double it stands for.</summary>
    /// <exception cref="JsonException">The number is beyond the range of double.</exception>
    internal static void Write(JsonElement number, IBufferWriter<byte> output)
    {
        var source = JsonMarshal.GetRawUtf8Value(number);
        if (IsCanonical(source)) output.Write(source);
        else Write(number.GetDouble(), output);
    }

    /// <summary>Whether a number has a canonical form: it is within the range of double.</summary>
    internal static bool HasForm(JsonElement number) => IsCanonical(JsonMarshal.GetRawUtf8Value(number)) || double.IsFinite(number.GetDouble());

    /// <summary>Writes a double.</summary>
    /// <exception cref="JsonException">The double is not finite.</exception>
    internal static void Write(double value, IBufferWriter<byte> output)
    {
        if (!double.IsFinite(value)) throw new JsonException("A number is beyond the range of double, or none at all.");
        if (value == 0)
        {
            output.Write("0"u8);
            return;
        }

        if (value < 0) output.Write("-"u8);
        Span<byte> buffer = stackalloc byte[ShortestDigits.MostDigits];
        var count = ShortestDigits.Of(Math.Abs(value), buffer, out var point);
        WriteDigits(buffer[..count], point, output);
    }

    /// <summary>
    /// Whether a number may stay as it is: up to 15 digits in plain notation, without needless zeros. A double tells
    /// all decimals of 15 digits apart, so there is none shorter for the same double.
    /// </summary>
    private static bool IsCanonical(ReadOnlySpan<byte> source)
    {
        var digits = source[0] == (byte)'-' ? source[1..] : source;
        if (digits.Length > 16 || digits.ContainsAny((byte)'e', (byte)'E') || digits.StartsWith("0.000000"u8)) return false;
        return digits.Contains((byte)'.')
            ? digits[^1] != (byte)'0'
            : digits.Length <= 15 && !source.SequenceEqual("-0"u8);
    }

    private static void WriteDigits(ReadOnlySpan<byte> digits, int point, IBufferWriter<byte> output)
    {
        if (point is < LeastPoint or > GreatestPoint) WriteWithExponent(digits, point - 1, output);
        else if (point <= 0) WriteParts(output, "0."u8, "00000"u8[..-point], digits);
        else if (point < digits.Length) WriteParts(output, digits[..point], "."u8, digits[point..]);
        else WriteParts(output, digits, "00000000000000000000"u8[..(point - digits.Length)], []);
    }

    private static void WriteWithExponent(ReadOnlySpan<byte> digits, int exponent, IBufferWriter<byte> output)
    {
        if (digits.Length == 1) output.Write(digits);
        else WriteParts(output, digits[..1], "."u8, digits[1..]);
        output.Write(exponent < 0 ? "e"u8 : "e+"u8);
        Span<byte> text = stackalloc byte[4];
        exponent.TryFormat(text, out var length, default, CultureInfo.InvariantCulture);
        output.Write(text[..length]);
    }

    private static void WriteParts(
        IBufferWriter<byte> output, ReadOnlySpan<byte> first, ReadOnlySpan<byte> second, ReadOnlySpan<byte> third)
    {
        output.Write(first);
        output.Write(second);
        output.Write(third);
    }
}
