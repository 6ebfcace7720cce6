namespace FixScore.Reporting.Cards;

/// <summary>How large a card is.</summary>
public enum CardShape
{
    /// <summary>1920 by 1080, for a video.</summary>
    Wide,

    /// <summary>1080 by 1080, for a post.</summary>
    Square,
}

/// <summary>The colours of a card.</summary>
public enum CardScheme
{
    /// <summary>Ink on warm paper.</summary>
    Light,

    /// <summary>The same on dark ground.</summary>
    Dark,
}
