using FixScore.Reporting.Cards;
using SkiaSharp;

namespace FixScore.Reporting.Images;

/// <summary>Fills the shapes of a picture.</summary>
static class Painter
{
    /// <summary>The pixels, four bytes each: red, green, blue, and one without meaning.</summary>
    public static byte[] Paint(Picture picture)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(bitmap);
        using var paint = new SKPaint { IsAntialias = true };
        foreach (var mark in picture.Marks) Paint(canvas, paint, mark, picture.Scheme);
        canvas.Flush();
        return bitmap.Bytes;
    }

    static void Paint(SKCanvas canvas, SKPaint paint, Mark mark, CardScheme scheme)
    {
        paint.Color = SKColor.Parse(Palette.Of(scheme, mark switch { Block block => block.Tone, Words words => words.Tone, _ => Tone.Bar }));
        if (mark is Words text) Write(canvas, paint, text);
        else if (mark is Hatching) Hatch(canvas, paint, mark.Box);
        else canvas.DrawRect(mark.Box.X, mark.Box.Y, mark.Box.Width, mark.Box.Height, paint);
    }

    // Stripes start at the corner of the picture, as a pattern of an SVG does.
    static void Hatch(SKCanvas canvas, SKPaint paint, Box box)
    {
        canvas.Save();
        canvas.ClipRect(new(box.X, box.Y, box.Right, box.Bottom));
        canvas.RotateDegrees(45);
        var longest = box.Right + box.Bottom;
        for (var across = 0; across < longest; across += Hatching.Period) canvas.DrawRect(across, -longest, Hatching.Stripe, 2 * longest, paint);
        canvas.Restore();
    }

    static void Write(SKCanvas canvas, SKPaint paint, Words words)
    {
        var faces = Typefaces.Of(words.Face);
        var letters = words.Text.EnumerateRunes().Select(letter =>
        {
            var face = faces.FirstOrDefault(each => each.Has(letter), faces[0]);
            var (outline, advance) = face.Drawn(letter);
            var scale = (float)words.Size / face.Units;
            return (Outline: outline, Scale: scale, Advance: advance * scale);
        }).ToArray();
        var x = Left(words, letters.Sum(letter => letter.Advance));
        foreach (var (outline, scale, advance) in letters)
        {
            canvas.Save();
            canvas.Translate(x, words.Baseline);
            canvas.Scale(scale);
            canvas.DrawPath(outline, paint);
            canvas.Restore();
            x += advance;
        }
    }

    static float Left(Words words, float width) => words.Anchor switch
    {
        Anchor.Start => words.Box.X,
        Anchor.End => words.Box.Right - width,
        _ => words.Box.X + words.Box.Width / 2 - width / 2,
    };
}
