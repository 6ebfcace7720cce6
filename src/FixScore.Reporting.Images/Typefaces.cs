using System.Text;
using FixScore.Reporting.Cards;
using SkiaSharp;

namespace FixScore.Reporting.Images;

/// <summary>The embedded fonts by what they are for.</summary>
static class Typefaces
{
    static readonly Lazy<Typeface> Plain = new(() => new("OpenSans-Regular.ttf"));
    static readonly Lazy<Typeface> Serif = new(() => new("Caladea-Regular.ttf"));
    static readonly Lazy<Typeface> Heading = new(() => new("Caladea-Bold.ttf"));

    /// <summary>The font of a face, then the one that stands in for letters it lacks.</summary>
    public static Typeface[] Of(Face face) => face switch
    {
        Face.Plain => [Plain.Value],
        Face.Serif => [Serif.Value, Plain.Value],
        _ => [Heading.Value, Plain.Value],
    };
}

/// <summary>A font as outlines in its own units, so that no hinting or scaling of the machine comes in. Thread safe.</summary>
sealed class Typeface
{
    const ushort Unknown = 0;

    readonly Lock door = new();
    readonly Dictionary<ushort, SKPath> outlines = [];
    readonly SKTypeface typeface;
    readonly SKFont font;

    public Typeface(string resource)
    {
        using var stream = typeof(Typeface).Assembly.GetManifestResourceStream(resource)!;
        using var data = SKData.Create(stream);
        typeface = SKTypeface.FromData(data);
        font = new(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, Subpixel = true, LinearMetrics = true, EmbeddedBitmaps = false };
    }

    /// <summary>Units of the font in its size.</summary>
    public int Units => typeface.UnitsPerEm;

    public bool Has(Rune letter)
    {
        lock (door) return font.GetGlyph(letter.Value) != Unknown;
    }

    /// <summary>The outline of a letter and how far the next one is from it, in units; an empty box for one that the font lacks.</summary>
    public (SKPath Outline, float Advance) Drawn(Rune letter)
    {
        lock (door)
        {
            var glyph = font.GetGlyph(letter.Value);
            if (!outlines.TryGetValue(glyph, out var outline)) outlines[glyph] = outline = font.GetGlyphPath(glyph) ?? new SKPath();
            return (outline, font.GetGlyphWidths([glyph])[0]);
        }
    }
}
