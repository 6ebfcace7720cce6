namespace FixScore.Reporting.Tables;

/// <summary>What a column holds.</summary>
public enum ColumnKind
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>Numbers. Exact in text forms; the nearest binary number in Parquet.</summary>
    Number,

    /// <summary>Whole numbers.</summary>
    Count,
}

/// <summary>A column.</summary>
/// <param name="Name">Its name, distinct in its table.</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Meaning">What it means, with the unit.</param>
public sealed record Column(string Name, ColumnKind Kind, string Meaning);

/// <summary>A cell: text, a number, or nothing (<c>default</c>), which is unknown or does not arise.</summary>
/// <param name="Text">The text.</param>
/// <param name="Number">The number.</param>
public readonly record struct Cell(string? Text, decimal? Number)
{
    /// <summary>A cell with text; empty for <c>null</c>.</summary>
    public static implicit operator Cell(string? text) => new(text, null);

    /// <summary>A cell with a number.</summary>
    public static implicit operator Cell(decimal number) => new(null, number);

    /// <summary>A cell with a number; empty for <c>null</c>.</summary>
    public static implicit operator Cell(decimal? number) => new(null, number);

    /// <summary>A cell with a whole number.</summary>
    public static implicit operator Cell(long number) => new(null, number);

    /// <summary>A cell with a whole number.</summary>
    public static implicit operator Cell(int number) => new(null, number);
}
