using System.Globalization;

namespace FixScore;

/// <summary>An RFC 6901 JSON Pointer into a record or profile.</summary>
/// <remarks>Got from <see cref="TeardownCase.At"/>, so that nobody counts indices. <c>default</c> is the whole document.</remarks>
/// <param name="Text">The pointer as text; empty for the whole document.</param>
public readonly record struct Pointer(string Text)
{
    /// <summary>The whole document.</summary>
    public static Pointer Root => new("");

    /// <summary>The pointer as text; empty for the whole document.</summary>
    public string Text { get; } = Text ?? "";

    /// <summary>The member <paramref name="name"/> of what this points at.</summary>
    public Pointer Child(string name)
    {
        var escaped = name.AsSpan().IndexOfAny('~', '/') < 0
            ? name
            : name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
        return new(string.Concat(Text, "/", escaped));
    }

    /// <summary>The element at <paramref name="index"/> of the list this points at.</summary>
    public Pointer Child(int index) => new(string.Concat(Text, "/", index.ToString(CultureInfo.InvariantCulture)));

    /// <inheritdoc/>
    public override string ToString() => Text ?? "";
}
