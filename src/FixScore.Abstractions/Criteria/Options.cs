using System.Collections.Immutable;

namespace FixScore;

/// <summary>What a value without a level counts for.</summary>
public enum WhenNoLevel
{
    /// <summary>It is unknown: the whole scale.</summary>
    Unknown,

    /// <summary>It is the lowest of the scale.</summary>
    Lowest,
}

/// <summary>Makes the options of a criterion. Each kind has one JSON form.</summary>
public static class Options
{
    /// <summary>The option shared by criteria with bands or levels; declare it among the criterion's options to offer it.</summary>
    public static Option<WhenNoLevel> NoLevel { get; } = Choice(
        "noLevel", WhenNoLevel.Unknown, "What a value beyond the last band, or a word without a level, counts for.");

    /// <summary>A number from <paramref name="min"/> to <paramref name="max"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The default is out of bounds.</exception>
    public static Option<decimal> Number(string name, decimal @default, decimal min, decimal max, string unit, string text)
    {
        CheckBounds(@default, min, max);
        return new NumberOption { Name = name, Default = @default, Min = min, Max = max, Unit = unit, Text = text };
    }

    /// <summary>A whole number from <paramref name="min"/> to <paramref name="max"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The default is out of bounds.</exception>
    public static Option<int> Count(string name, int @default, int min, int max, string unit, string text)
    {
        CheckBounds(@default, min, max);
        return new CountOption { Name = name, Default = @default, Min = min, Max = max, Unit = unit, Text = text };
    }

    /// <summary>Yes or no.</summary>
    public static Option<bool> Flag(string name, bool @default, string text) =>
        new FlagOption { Name = name, Default = @default, Text = text };

    /// <summary>One word of a list, written as <see cref="Word.Of{T}"/> writes it.</summary>
    public static Option<TEnum> Choice<TEnum>(string name, TEnum @default, string text) where TEnum : struct, Enum =>
        new ChoiceOption<TEnum> { Name = name, Default = @default, Text = text };

    /// <summary>Bands; points of the default are shares of the scale.</summary>
    public static Option<Bands> Bands(string name, Bands @default, string unit, string text) =>
        new BandsOption { Name = name, Default = @default, Unit = unit, Text = text };

    /// <summary>Levels for the words of the default; its points are shares of the scale.</summary>
    /// <param name="name">Name in profiles.</param>
    /// <param name="default">The words and their default shares.</param>
    /// <param name="text">What the levels judge.</param>
    /// <param name="more">Further words that may have a level but have none by default.</param>
    public static Option<Levels> Levels(string name, Levels @default, string text, params ImmutableArray<string> more) =>
        new LevelsOption { Name = name, Default = @default, Text = text, Words = [.. @default.Entries.Select(level => level.Word), .. more] };

    /// <summary>A list of slugs.</summary>
    public static Option<ImmutableArray<string>> Words(string name, ImmutableArray<string> @default, string text) =>
        new WordsOption { Name = name, Default = @default, Text = text };

    static void CheckBounds<T>(T value, T min, T max) where T : IComparable<T>
    {
        if (value.CompareTo(min) < 0 || value.CompareTo(max) > 0) throw new ArgumentOutOfRangeException(nameof(value));
    }
}
