using System.Collections.Immutable;

namespace FixScore.Reporting.Cards;

/// <summary>A picture in the making.</summary>
sealed class Easel
{
    readonly ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();
    readonly CardGrid grid;

    public Easel(CardGrid grid)
    {
        this.grid = grid;
        Fill(new(0, 0, grid.Width, grid.Height), Tone.Paper);
    }

    public void Fill(Box box, Tone tone) => marks.Add(new Block(box, tone));

    /// <summary>A line of text that has been cut to its room; <paramref name="x"/> is the side, or middle, that it keeps to.</summary>
    public void Write(string text, int x, int baseline, Face face, int size, Tone tone, Anchor anchor = Anchor.Start)
    {
        if (text.Length == 0) return;
        var width = Advances.Of(text, face, size);
        var left = anchor switch { Anchor.Start => x, Anchor.End => x - width, _ => x - width / 2 };
        marks.Add(new Words(new(left, baseline - size, width, size + size / 4), baseline, text, face, size, tone, anchor));
    }

    /// <summary>Lines of text, the first on <paramref name="baseline"/>; gives the baseline of the last.</summary>
    public int Write(Paragraph text, int x, int baseline, Face face, Tone tone)
    {
        var step = text.Size + text.Size * (face switch { Face.Plain => 42, Face.Serif => 24, _ => 12 }) / 100;
        for (var line = 0; line < text.Lines.Length; line++) Write(text.Lines[line], x, baseline + line * step, face, text.Size, tone);
        return baseline + Math.Max(0, text.Lines.Length - 1) * step;
    }

    /// <summary>The line above a heading: a text that is cut where it is too long, and one behind it that is not.</summary>
    public void Kicker(string text, string behind)
    {
        var front = Paragraph.OneLine(text, Face.Plain, grid.Kicker, grid.Inner - Advances.Of(behind, Face.Plain, grid.Kicker));
        Write(front + behind, grid.Margin, grid.Top, Face.Plain, grid.Kicker, Tone.Soft);
    }

    /// <summary>An interval on its way: solid up to the low end, hatched from there to the high end, both ends marked.</summary>
    public void Bar(Box track, decimal low, decimal high)
    {
        var (from, to) = (At(track, low), At(track, high));
        Fill(track, Tone.Track);
        Fill(track with { Width = from - track.X }, Tone.Bar);
        marks.Add(new Hatching(track with { X = from, Width = to - from }));
        if (to > from) Frame(track with { X = from, Width = to - from });
        End(track, from);
        if (to > from) End(track, to);
    }

    /// <summary>Short lines below a bar, as on a ruler.</summary>
    public void Ruler(Box track, int ticks)
    {
        for (var tick = 0; tick <= ticks; tick++) Fill(new(track.X + (track.Width - 2) * tick / ticks, track.Bottom, 2, 10), Tone.Rule);
    }

    /// <summary>Numbers below a ruler, each under its line; the outer ones keep within it.</summary>
    public void Numbers(Box track, int ticks, int baseline, Func<int, string> told)
    {
        for (var tick = 0; tick <= ticks; tick++)
            Write(told(tick), track.X + track.Width * tick / ticks, baseline, Face.Plain, grid.Small, Tone.Soft,
                tick == 0 ? Anchor.Start : tick == ticks ? Anchor.End : Anchor.Middle);
    }

    public Picture Picture(CardScheme scheme, string title, string description) =>
        new(grid.Width, grid.Height, scheme, title, description, [.. marks.Where(mark => mark is not { Box: { Width: 0 } or { Height: 0 } })]);

    void Frame(Box box)
    {
        Fill(box with { Height = 2 }, Tone.Bar);
        Fill(box with { Y = box.Bottom - 2, Height = 2 }, Tone.Bar);
    }

    void End(Box track, int at)
    {
        var (thick, over) = track.Height > 30 ? (4, 8) : (3, 5);
        Fill(new(Math.Clamp(at - thick / 2, track.X, track.Right - thick), track.Y - over, thick, track.Height + 2 * over), Tone.Ink);
    }

    static int At(Box track, decimal share) => track.X + (int)decimal.Round(track.Width * Math.Clamp(share, 0, 1), MidpointRounding.AwayFromZero);
}
