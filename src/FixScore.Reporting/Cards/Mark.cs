namespace FixScore.Reporting.Cards;

/// <summary>Something drawn.</summary>
/// <param name="Box">Where; for text, room that is enough in every common font.</param>
public abstract record Mark(Box Box);

/// <summary>A filled rectangle.</summary>
/// <param name="Box">Where.</param>
/// <param name="Tone">Its colour.</param>
public sealed record Block(Box Box, Tone Tone) : Mark(Box);

/// <summary>A rectangle of slanting stripes in the colour of bars: what is not certain.</summary>
/// <param name="Box">Where.</param>
public sealed record Hatching(Box Box) : Mark(Box)
{
    /// <summary>Distance from a stripe to the next, across them, in pixels.</summary>
    public const int Period = 12;

    /// <summary>Width of a stripe, in pixels.</summary>
    public const int Stripe = 5;
}

/// <summary>A line of text.</summary>
/// <param name="Box">Room for it.</param>
/// <param name="Baseline">Distance of the line it stands on from the top.</param>
/// <param name="Text">The text, without control characters. May hold text of a record, which nobody has checked.</param>
/// <param name="Face">Its typeface.</param>
/// <param name="Size">Its size in pixels.</param>
/// <param name="Tone">Its colour.</param>
/// <param name="Anchor">Which side of the room it keeps to.</param>
public sealed record Words(Box Box, int Baseline, string Text, Face Face, int Size, Tone Tone, Anchor Anchor) : Mark(Box);

/// <summary>Colours by what they are for.</summary>
public enum Tone
{
    /// <summary>The ground.</summary>
    Paper,

    /// <summary>Text and the ends of bars.</summary>
    Ink,

    /// <summary>Quiet text.</summary>
    Soft,

    /// <summary>Thin lines that only divide.</summary>
    Rule,

    /// <summary>The way a bar could still go.</summary>
    Track,

    /// <summary>Bars.</summary>
    Bar,
}

/// <summary>Typefaces.</summary>
public enum Face
{
    /// <summary>Sans serif: labels and numbers.</summary>
    Plain,

    /// <summary>Serif: sentences.</summary>
    Serif,

    /// <summary>Bold serif: headings.</summary>
    Heading,
}

/// <summary>Which side of its room a text keeps to.</summary>
public enum Anchor
{
    /// <summary>The left.</summary>
    Start,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The right.</summary>
    End,
}
