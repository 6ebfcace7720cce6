using System.Globalization;

namespace FixScore;

/// <summary>What a <see cref="Value"/> holds.</summary>
public enum ValueKind
{
    /// <summary>A word, slug or name.</summary>
    Word,

    /// <summary>An exact number.</summary>
    Number,

    /// <summary>A range of numbers.</summary>
    Range,

    /// <summary>Yes or no.</summary>
    Flag,
}

/// <summary>A fact named in a reason: a number, a range, a word or a flag, numbers with their unit.</summary>
/// <remarks>Never an object, so that it can be compared and written. <c>default</c> is the empty word. Immutable and thread safe.</remarks>
public readonly record struct Value
{
    readonly string? word;

    Value(ValueKind kind, Interval number, string? word, string? unit) =>
        (Kind, Number, this.word, Unit) = (kind, number, word, unit);

    /// <summary>What it holds.</summary>
    public ValueKind Kind { get; }

    /// <summary>The number or range; a flag is 1 or 0; [0, 0] for a word.</summary>
    public Interval Number { get; }

    /// <summary>The word; empty unless <see cref="Kind"/> is <see cref="ValueKind.Word"/>.</summary>
    public string Text => word ?? "";

    /// <summary>Unit of the number, such as <c>mm</c>; <c>null</c> when it has none.</summary>
    public string? Unit { get; }

    /// <summary>A number with its unit.</summary>
    public static Value Of(decimal number, string? unit = null) => new(ValueKind.Number, number, null, unit);

    /// <summary>A range with its unit; an exact one is a number.</summary>
    public static Value Of(Interval range, string? unit = null) =>
        new(range.IsExact ? ValueKind.Number : ValueKind.Range, range, null, unit);

    /// <summary>A number without a unit.</summary>
    public static implicit operator Value(decimal number) => Of(number);

    /// <summary>A whole number without a unit.</summary>
    public static implicit operator Value(int number) => Of(number);

    /// <summary>A range without a unit.</summary>
    public static implicit operator Value(Interval range) => Of(range);

    /// <summary>A word.</summary>
    public static implicit operator Value(string word) => new(ValueKind.Word, 0m, word, null);

    /// <summary>A flag.</summary>
    public static implicit operator Value(bool flag) => new(ValueKind.Flag, flag ? 1m : 0m, null, null);

    /// <summary>Text for people, numbers written as <paramref name="culture"/> does.</summary>
    public string ToString(CultureInfo culture) => Kind switch
    {
        ValueKind.Number => WithUnit(Shown(Number.Low, culture)),
        ValueKind.Range => WithUnit($"{Shown(Number.Low, culture)} to {Shown(Number.High, culture)}"),
        ValueKind.Flag => Number.Low == 1m ? "yes" : "no",
        _ => Text,
    };

    /// <summary>Invariant text.</summary>
    public override string ToString() => ToString(CultureInfo.InvariantCulture);

    static string Shown(decimal number, CultureInfo culture) => number.ToString("0.####", culture);

    string WithUnit(string text) => Unit is null ? text : $"{text} {Unit}";
}
