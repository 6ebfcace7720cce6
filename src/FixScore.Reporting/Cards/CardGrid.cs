namespace FixScore.Reporting.Cards;

/// <summary>Where things stand and how large they are, in pixels: large enough to be read on a phone that shows the picture 7 cm wide.</summary>
sealed record CardGrid
{
    public required int Width { get; init; }

    public required int Height { get; init; }

    public required int Margin { get; init; }

    /// <summary>First line, above the heading.</summary>
    public required int Kicker { get; init; }

    /// <summary>Sizes of a heading, the first in which it has room.</summary>
    public required int[] Heading { get; init; }

    /// <summary>Sizes of the verdict.</summary>
    public required int[] Sentence { get; init; }

    public required int Subheading { get; init; }

    public required int Label { get; init; }

    public required int Small { get; init; }

    /// <summary>Thickness of the bar of a total.</summary>
    public required int Bar { get; init; }

    /// <summary>The most lines of a list.</summary>
    public required int Rows { get; init; }

    /// <summary>Distance of the first baseline from the top.</summary>
    public required int Top { get; init; }

    /// <summary>Distance of the last baseline from the bottom.</summary>
    public required int Bottom { get; init; }

    /// <summary>Lines the caution in the foot may take.</summary>
    public required int CautionLines { get; init; }

    public int Inner => Width - 2 * Margin;

    /// <summary>Whether there is room for two columns.</summary>
    public bool IsWide => Width > Height;

    public static CardGrid Of(CardShape shape) => shape == CardShape.Square ? Square : Wide;

    static CardGrid Wide { get; } = new()
    {
        Width = 1920, Height = 1080, Margin = 112, Top = 118, Bottom = 58, Kicker = 32, Heading = [104, 88, 72], Sentence = [54, 46], Subheading = 38, Label = 32, Small = 25,
        Bar = 44, Rows = 6, CautionLines = 1,
    };

    static CardGrid Square { get; } = new()
    {
        Width = 1080, Height = 1080, Margin = 72, Top = 88, Bottom = 46, Kicker = 28, Heading = [80, 68, 56], Sentence = [42, 38], Subheading = 32, Label = 27, Small = 22,
        Bar = 34, Rows = 6, CautionLines = 2,
    };
}
