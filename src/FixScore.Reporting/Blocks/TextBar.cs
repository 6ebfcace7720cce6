namespace FixScore.Reporting.Blocks;

/// <summary>Bars and spans of block characters: full up to the low end of a bar and between the ends of a span, light where it is open.</summary>
static class TextBar
{
    const int Width = 16;
    const char Solid = '\u2588';
    const char Light = '\u2591';
    const char Empty = '\u00B7';

    public static string Of(Extent? extent, GridKind kind)
    {
        if (extent is not { } drawn) return "";
        var (low, high) = (Cells(drawn.Value.Low, drawn.Scale), Cells(drawn.Value.High, drawn.Scale));
        var (first, second) = kind == GridKind.Bar ? (Solid, Light) : (Empty, Solid);
        var text = new string(first, low) + new string(second, Math.Max(high - low, kind == GridKind.Span ? 1 : 0)) + new string(Empty, Width - high);
        return text[..Width];
    }

    static int Cells(decimal value, Scale scale) => (int)decimal.Round((Math.Clamp(value, scale.Min, scale.Max) - scale.Min) / (scale.Max - scale.Min) * Width, MidpointRounding.AwayFromZero);
}
