namespace FixScore.Reporting.Cards;

/// <summary>The colours of the summary page. Bars differ from their ground by lightness, not by hue alone.</summary>
public static class Palette
{
    /// <summary>A colour as <c>#rrggbb</c>.</summary>
    public static string Of(CardScheme scheme, Tone tone) => scheme == CardScheme.Dark ? Dark(tone) : Light(tone);

    static string Light(Tone tone) => tone switch
    {
        Tone.Paper => "#fbfaf7",
        Tone.Ink => "#1f2430",
        Tone.Soft => "#5a6070",
        Tone.Rule => "#dedad0",
        Tone.Track => "#efece4",
        _ => "#33617f",
    };

    static string Dark(Tone tone) => tone switch
    {
        Tone.Paper => "#15181d",
        Tone.Ink => "#e8e5dd",
        Tone.Soft => "#a7acb7",
        Tone.Rule => "#343a44",
        Tone.Track => "#22262d",
        _ => "#7fb0d0",
    };
}
