using System.Collections.Immutable;

namespace FixScore.Reporting.Cards;

/// <summary>A drawing in whole pixels, from which every format is made. Immutable and thread safe.</summary>
/// <param name="Width">Width in pixels.</param>
/// <param name="Height">Height in pixels.</param>
/// <param name="Scheme">Which colours.</param>
/// <param name="Title">What it shows, in a sentence. May hold text of a record, which nobody has checked.</param>
/// <param name="Description">The same at length, with nothing cut.</param>
/// <param name="Marks">What is drawn, from the bottom to the top.</param>
public sealed record Picture(int Width, int Height, CardScheme Scheme, string Title, string Description, ImmutableArray<Mark> Marks)
{
    /// <summary>The picture as SVG that stands alone; text stays text.</summary>
    public string ToSvg() => PictureSvg.Of(this);
}

/// <summary>A rectangle in pixels, from the upper left corner.</summary>
/// <param name="X">Distance from the left.</param>
/// <param name="Y">Distance from the top.</param>
/// <param name="Width">Width, 0 or more.</param>
/// <param name="Height">Height, 0 or more.</param>
public readonly record struct Box(int X, int Y, int Width, int Height)
{
    /// <summary>Distance of the right side from the left of the picture.</summary>
    public int Right => X + Width;

    /// <summary>Distance of the lower side from the top of the picture.</summary>
    public int Bottom => Y + Height;
}
