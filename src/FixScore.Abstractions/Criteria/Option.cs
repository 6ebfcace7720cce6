using System.Collections.Immutable;

namespace FixScore;

/// <summary>An option of a criterion: a typed key. Made by <see cref="Options"/>; the list of kinds is closed.</summary>
/// <remarks>The kernel makes validation, JSON Schema, help and defaults of it, so a plugin needs no serializer.</remarks>
public abstract record Option
{
    private protected Option() { }

    /// <summary>The name in profiles, camelCase.</summary>
    public required string Name { get; init; }

    /// <summary>What it does, in a sentence.</summary>
    public required string Text { get; init; }

    /// <summary>Unit of its numbers; <c>null</c> when it has none.</summary>
    public string? Unit { get; init; }

    /// <summary>The default on a scale: shares of the scale become points.</summary>
    public abstract object DefaultOn(Scale scale);
}

/// <summary>An option whose value is a <typeparamref name="T"/>.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
public abstract record Option<T> : Option where T : notnull
{
    private protected Option() { }

    /// <summary>The value where a profile does not set it. Points in it are shares of the scale, 0 to 1.</summary>
    public required T Default { get; init; }

    /// <inheritdoc/>
    public override object DefaultOn(Scale scale) => Default;
}

/// <summary>A number within bounds.</summary>
public sealed record NumberOption : Option<decimal>
{
    internal NumberOption() { }

    /// <summary>The least allowed.</summary>
    public required decimal Min { get; init; }

    /// <summary>The most allowed.</summary>
    public required decimal Max { get; init; }
}

/// <summary>A whole number within bounds.</summary>
public sealed record CountOption : Option<int>
{
    internal CountOption() { }

    /// <summary>The least allowed.</summary>
    public required int Min { get; init; }

    /// <summary>The most allowed.</summary>
    public required int Max { get; init; }
}

/// <summary>Yes or no.</summary>
public sealed record FlagOption : Option<bool>
{
    internal FlagOption() { }
}

/// <summary>One word of a closed list, seen without its type.</summary>
public interface IChoiceOption
{
    /// <summary>The words allowed.</summary>
    ImmutableArray<string> Words { get; }

    /// <summary>The value of a word; <c>null</c> when it is not allowed.</summary>
    object? ValueOf(string word);

    /// <summary>The word of a value.</summary>
    string WordOf(object value);
}

/// <summary>One word of a closed list.</summary>
/// <typeparam name="TEnum">The list.</typeparam>
public sealed record ChoiceOption<TEnum> : Option<TEnum>, IChoiceOption where TEnum : struct, Enum
{
    internal ChoiceOption() { }

    /// <inheritdoc/>
    public ImmutableArray<string> Words => Word.All<TEnum>();

    /// <inheritdoc/>
    public object? ValueOf(string word) => Word.TryParse<TEnum>(word, out var value) ? value : null;

    /// <inheritdoc/>
    public string WordOf(object value) => Word.Of((TEnum)value);
}

/// <summary>Bands that make points of a number.</summary>
public sealed record BandsOption : Option<Bands>
{
    internal BandsOption() { }

    /// <inheritdoc/>
    public override object DefaultOn(Scale scale) => Default.On(scale);
}

/// <summary>Levels that make points of a word.</summary>
public sealed record LevelsOption : Option<Levels>
{
    internal LevelsOption() { }

    /// <summary>The words that may have a level.</summary>
    public required ImmutableArray<string> Words { get; init; }

    /// <inheritdoc/>
    public override object DefaultOn(Scale scale) => Default.On(scale);
}

/// <summary>A list of slugs.</summary>
public sealed record WordsOption : Option<ImmutableArray<string>>
{
    internal WordsOption() { }
}
