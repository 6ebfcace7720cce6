using System.Collections.Immutable;

namespace FixScore;

/// <summary>A word as observed: known, one of several, or not observed at all.</summary>
/// <remarks>
/// <c>default</c> is "not observed": every word is possible. The order of the words carries no meaning but is kept.
/// Equality is by the words in order. Immutable and thread safe.
/// </remarks>
/// <typeparam name="T">An enumeration of words, or a slug.</typeparam>
public readonly struct OneOf<T> : IEquatable<OneOf<T>> where T : notnull
{
    readonly ImmutableArray<T> words;

    /// <summary>One of these; no words at all means not observed.</summary>
    public OneOf(params ImmutableArray<T> words) => this.words = words;

    /// <summary>The words stated; empty when nothing was observed.</summary>
    public ImmutableArray<T> Stated => words.IsDefault ? [] : words;

    /// <summary>Whether nothing was observed.</summary>
    public bool IsUnknown => words.IsDefaultOrEmpty;

    /// <summary>Whether exactly one word is stated.</summary>
    public bool IsExact => Stated.Length == 1;

    /// <summary>Whether it is certainly <paramref name="word"/>.</summary>
    public bool Is(T word) => IsExact && Same(words[0], word);

    /// <summary>Whether it may be <paramref name="word"/>: stated among others, or nothing was observed.</summary>
    public bool MayBe(T word)
    {
        if (IsUnknown) return true;
        foreach (var each in words)
            if (Same(each, word)) return true;
        return false;
    }

    /// <summary>A word that is known.</summary>
    public static implicit operator OneOf<T>(T word) => new(word);

    /// <inheritdoc/>
    public bool Equals(OneOf<T> other) => Stated.SequenceEqual(other.Stated);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is OneOf<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Stated.Aggregate(0, HashCode.Combine);

    /// <summary>Whether both state the same words in the same order.</summary>
    public static bool operator ==(OneOf<T> left, OneOf<T> right) => left.Equals(right);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(OneOf<T> left, OneOf<T> right) => !left.Equals(right);

    static bool Same(T a, T b) => EqualityComparer<T>.Default.Equals(a, b);
}
