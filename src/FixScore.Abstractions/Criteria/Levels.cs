using System.Collections.Immutable;

namespace FixScore;

/// <summary>One level.</summary>
/// <param name="Word">The word.</param>
/// <param name="Points">Points; in a default, a share of the scale from 0 to 1.</param>
public readonly record struct Level(string Word, decimal Points);

/// <summary>A word becomes points. Immutable and thread safe.</summary>
public sealed record Levels
{
    Levels(ImmutableArray<Level> entries) => Entries = entries;

    /// <summary>The levels, in the order given.</summary>
    public ImmutableArray<Level> Entries { get; }

    /// <summary>Levels in the order in which help shows them.</summary>
    /// <exception cref="ArgumentException">A word has two levels.</exception>
    public static Levels Of(params ImmutableArray<Level> levels) =>
        levels.Select(level => level.Word).Distinct(StringComparer.Ordinal).Count() == levels.Length
            ? new(levels)
            : throw new ArgumentException("A word has two levels.", nameof(levels));

    /// <summary>Levels as pairs of word and share.</summary>
    /// <exception cref="ArgumentException">A word has two levels.</exception>
    public static Levels Of(params ReadOnlySpan<(string Word, decimal Share)> levels)
    {
        var entries = ImmutableArray.CreateBuilder<Level>(levels.Length);
        foreach (var (word, share) in levels) entries.Add(new(word, share));
        return Of(entries.MoveToImmutable());
    }

    /// <summary>The same with shares turned into points of a scale.</summary>
    public Levels On(Scale scale) => new([.. Entries.Select(level => level with { Points = scale.At(level.Points) })]);

    /// <summary>Points for a word, as the hull over the words it can be.</summary>
    /// <param name="possible">The words it can be; at least one.</param>
    /// <param name="noLevel">Points of a word without a level.</param>
    /// <exception cref="ArgumentException">No word is possible.</exception>
    public Interval Of(IEnumerable<string> possible, Interval noLevel) =>
        Interval.HullOf(possible.Select(word => PointsOf(word) ?? noLevel))
        ?? throw new ArgumentException("No word is possible.", nameof(possible));

    Interval? PointsOf(string word)
    {
        foreach (var level in Entries)
            if (string.Equals(level.Word, word, StringComparison.Ordinal)) return level.Points;
        return null;
    }
}
