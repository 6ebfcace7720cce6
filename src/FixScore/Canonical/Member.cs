using System.Runtime.InteropServices;
using System.Text.Json;

namespace FixScore.Canonical;

/// <summary>A member of an object, ordered by its name in UTF-16 code units (RFC 8785, section 3.2.3).</summary>
internal readonly struct Member : IComparable<Member>
{
    private readonly JsonProperty _property;
    private readonly byte[]? _unescapedName;

    internal Member(JsonProperty property)
    {
        _property = property;
        _unescapedName = CanonicalText.IsEscaped(RawName) ? CanonicalText.Unescape(RawName) : null;
    }

    /// <summary>The name as it stands between its quotes.</summary>
    internal ReadOnlySpan<byte> RawName => JsonMarshal.GetRawUtf8PropertyName(_property);

    internal JsonElement Value => _property.Value;

    private ReadOnlySpan<byte> Name => _unescapedName ?? RawName;

    /// <inheritdoc/>
    public int CompareTo(Member other)
    {
        var left = Name;
        var right = other.Name;
        var same = left.CommonPrefixLength(right);
        return same == left.Length || same == right.Length
            ? left.Length.CompareTo(right.Length)
            : Rank(left[same]).CompareTo(Rank(right[same]));
    }

    // UTF-8 sorts as code points do. UTF-16 differs in one point only: the surrogates, which stand for what UTF-8
    // begins with F0 to F4, come before U+E000 to U+FFFF, which UTF-8 begins with EE or EF.
    private static int Rank(byte unit) => unit is 0xEE or 0xEF ? unit + 0x10 : unit;
}
