namespace FixScore.Reporting.Cards;

/// <summary>Where things stand and how large they are, in pixels: large enough to be read on a phone that shows the picture 7 cm wide.</summary>
sealed record CardGrid
{
    public required int Width { get; init; }

    public required int Height { get; init; }

    public required int Margin { get; init; }

    /// <summary>First line, above the heading.</summary>
    public required int Kicker { get; init; }

    /// <summary>Ways to set a heading; the first that has room for it is taken.</summary>
    public required Setting[] Heading { get; init; }

    /// <summary>Ways to set a sentence as a heading.</summary>
    public required Setting[] Headline { get; init; }

    /// <summary>Ways to set the verdict.</summary>
    public required Setting[] Sentence { get; init; }

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

    /// <summary>From a baseline of labels to the next.</summary>
    public int LabelStep => Label * 142 / 100;

    public int Inner => Width - 2 * Margin;

    /// <summary>Whether there is room for two columns.</summary>
    public bool IsWide => Width > Height;

    public static CardGrid Of(CardShape shape) => shape == CardShape.Square ? Square : Wide;

    static CardGrid Wide { get; } = new()
    {
        Width = 1920, Height = 1080, Margin = 112, Top = 112, Bottom = 54, Kicker = 32, Heading = [new(104), new(88), new(72), new(60, 2)], Headline = [new(104), new(88), new(72), new(60, 2)],
        Sentence = [new(54), new(48), new(46, 2), new(38, 3)], Subheading = 38, Label = 32, Small = 24,
        Bar = 44, Rows = 6, CautionLines = 2,
    };

    static CardGrid Square { get; } = new()
    {
        Width = 1080, Height = 1080, Margin = 72, Top = 88, Bottom = 46, Kicker = 28, Heading = [new(80), new(68), new(60), new(52, 2)], Headline = [new(80), new(72, 2), new(56, 2)],
        Sentence = [new(42), new(40, 2), new(36, 3)], Subheading = 32, Label = 27, Small = 22,
        Bar = 34, Rows = 6, CautionLines = 3,
    };
}

/// <summary>A way to set text.</summary>
/// <param name="Size">Its size in pixels.</param>
/// <param name="Lines">The most lines it may take.</param>
readonly record struct Setting(int Size, int Lines = 1);
