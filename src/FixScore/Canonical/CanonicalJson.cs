using System.Buffers;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace FixScore.Canonical;

/// <summary>
/// The canonical form of a JSON value after RFC 8785 (JSON Canonicalization Scheme): equal data give equal bytes,
/// however they were spaced, ordered or escaped. Stateless, so safe to use from any thread.
/// </summary>
/// <remarks>
/// Numbers are IEEE 754 doubles there: digits beyond a double's are lost. An object that has a name twice is outside
/// the scheme (I-JSON, RFC 7493); it is for the reader to refuse, and is not looked for here.
/// </remarks>
public static class CanonicalJson
{
    /// <summary>The canonical form as UTF-8 bytes, without a byte order mark.</summary>
    /// <param name="element">The value; its document must not be disposed.</param>
    /// <param name="without">Names of members to leave out of the outermost object; deeper ones stay.</param>
    /// <exception cref="ArgumentException">The element is a default one and holds no value.</exception>
    /// <exception cref="JsonException">
    /// The value has no canonical form: a number beyond the range of double, a lone surrogate or invalid UTF-8.
    /// </exception>
    public static byte[] ToBytes(JsonElement element, params ReadOnlySpan<string> without)
    {
        using var buffer = new PooledBuffer();
        Write(element, buffer, without);
        return buffer.Written.ToArray();
    }

    /// <summary>Writes the canonical form as UTF-8 bytes. After an exception the output holds a part of it.</summary>
    /// <param name="element">The value; its document must not be disposed.</param>
    /// <param name="output">Where to write.</param>
    /// <param name="without">Names of members to leave out of the outermost object; deeper ones stay.</param>
    /// <exception cref="ArgumentException">The element is a default one and holds no value.</exception>
    /// <exception cref="JsonException">
    /// The value has no canonical form: a number beyond the range of double, a lone surrogate or invalid UTF-8.
    /// </exception>
    public static void Write(JsonElement element, IBufferWriter<byte> output, params ReadOnlySpan<string> without)
    {
        ArgumentNullException.ThrowIfNull(output);
        switch (element.ValueKind)
        {
            case JsonValueKind.Undefined:
                throw new ArgumentException("The element holds no value.", nameof(element));
            case JsonValueKind.Object:
                WriteObject(element, output, without);
                break;
            case JsonValueKind.Array:
                WriteArray(element, output);
                break;
            case JsonValueKind.String:
                CanonicalText.Write(JsonMarshal.GetRawUtf8Value(element)[1..^1], output);
                break;
            case JsonValueKind.Number:
                CanonicalNumber.Write(element, output);
                break;
            default:
                output.Write(JsonMarshal.GetRawUtf8Value(element));
                break;
        }
    }

    private static void WriteObject(JsonElement element, IBufferWriter<byte> output, ReadOnlySpan<string> without)
    {
        var members = ArrayPool<Member>.Shared.Rent(element.GetPropertyCount());
        var count = 0;
        foreach (var property in element.EnumerateObject())
            if (!IsAmong(property, without)) members[count++] = new(property);

        var sorted = members.AsSpan(0, count);
        sorted.Sort();
        output.Write("{"u8);
        for (var i = 0; i < count; i++)
        {
            if (i > 0) output.Write(","u8);
            CanonicalText.Write(sorted[i].RawName, output);
            output.Write(":"u8);
            Write(sorted[i].Value, output);
        }

        output.Write("}"u8);
        // Not in a finally: after an exception the array is left to the garbage collector, which is as good.
        ArrayPool<Member>.Shared.Return(members, clearArray: true);
    }

    private static void WriteArray(JsonElement element, IBufferWriter<byte> output)
    {
        var first = true;
        output.Write("["u8);
        foreach (var item in element.EnumerateArray())
        {
            if (!first) output.Write(","u8);
            first = false;
            Write(item, output);
        }

        output.Write("]"u8);
    }

    private static bool IsAmong(JsonProperty property, ReadOnlySpan<string> names)
    {
        foreach (var name in names)
            if (property.NameEquals(name)) return true;
        return false;
    }
}
