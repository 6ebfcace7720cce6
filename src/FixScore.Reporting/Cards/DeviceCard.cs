using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>The card of one device.</summary>
sealed class DeviceCard(CardGrid grid, CultureInfo culture)
{
    const int Ticks = 4;

    readonly CardText text = new(culture);

    public Picture Of(Judgement judgement, CardScheme scheme)
    {
        var easel = new Easel(grid);
        var foot = CardFoot.Draw(easel, grid, [judgement]);
        var y = Head(easel, judgement);
        y = Total(easel, judgement, y + grid.Bar);
        if (grid.IsWide) Columns(easel, judgement, y, foot);
        else Stack(easel, judgement, y, foot);
        return easel.Picture(scheme, $"{judgement.Device}: {text.Verdict(judgement)}", $"{text.Known(judgement)} What limits it most: {text.Limit(judgement)} {CardFoot.Told([judgement])}");
    }

    int Head(Easel easel, Judgement judgement)
    {
        easel.Write(Paragraph.OneLine(judgement.Profile.Title, Face.Plain, grid.Kicker, grid.Inner), grid.Margin, grid.Top, Face.Plain, grid.Kicker, Tone.Soft);
        var name = Paragraph.Fit(judgement.Device, Face.Heading, grid.Inner, 1, grid.Heading);
        var y = easel.Write(name, grid.Margin, grid.Top + name.Size + grid.Kicker / 4, Face.Heading, Tone.Ink);
        var verdict = Paragraph.Fit(text.Verdict(judgement), Face.Serif, grid.Inner, grid.IsWide ? 1 : 2, grid.Sentence);
        return easel.Write(verdict, grid.Margin, y + verdict.Size * 8 / 5, Face.Serif, Tone.Ink);
    }

    int Total(Easel easel, Judgement judgement, int top)
    {
        var scale = judgement.Profile.Scale;
        var track = new Box(grid.Margin, top, grid.Inner, grid.Bar);
        easel.Bar(track, (judgement.Score.Total.Low - scale.Min) / (scale.Max - scale.Min), (judgement.Score.Total.High - scale.Min) / (scale.Max - scale.Min));
        var baseline = track.Bottom + grid.Small * 3 / 2;
        for (var tick = 0; tick <= Ticks; tick++)
            easel.Write(text.Number(scale.Min + (scale.Max - scale.Min) * tick / Ticks, scale), track.X + track.Width * tick / Ticks, baseline,
                Face.Plain, grid.Small, Tone.Soft, tick == 0 ? Anchor.Start : tick == Ticks ? Anchor.End : Anchor.Middle);
        return baseline;
    }

    void Columns(Easel easel, Judgement judgement, int above, int foot)
    {
        const int Gap = 96;
        var left = grid.Inner * 62 / 100;
        var baseline = above + grid.Subheading * 9 / 4;
        new LineBars(easel, grid, text).Draw(judgement, new(grid.Margin, baseline, left, foot - grid.Small - baseline));
        Limit(easel, judgement, new(grid.Margin + left + Gap, baseline, grid.Inner - left - Gap, foot - grid.Small - baseline));
    }

    void Stack(Easel easel, Judgement judgement, int above, int foot)
    {
        const int LimitLines = 3;
        var baseline = above + grid.Subheading * 2;
        var limit = foot - grid.Small - LimitLines * grid.Label * 142 / 100 - grid.Subheading;
        new LineBars(easel, grid, text).Draw(judgement, new(grid.Margin, baseline, grid.Inner, limit - grid.Subheading - baseline));
        Limit(easel, judgement, new(grid.Margin, limit + grid.Subheading / 2, grid.Inner, foot - grid.Small - limit));
    }

    void Limit(Easel easel, Judgement judgement, Box room)
    {
        var step = grid.Label * 142 / 100;
        easel.Write("What limits it most", room.X, room.Y, Face.Heading, grid.Subheading, Tone.Ink);
        var first = room.Y + grid.Subheading / 3 + step;
        var legend = grid.IsWide ? Paragraph.Fit($"{CardText.Legend} {text.Known(judgement)}", Face.Plain, room.Width, 3, grid.Small) : default;
        var legendTop = room.Bottom - (grid.IsWide ? legend.Lines.Length * (grid.Small * 142 / 100) : 0);
        var limit = Paragraph.Fit(text.Limit(judgement), Face.Plain, room.Width, Math.Max(1, (legendTop - first) / step), grid.Label);
        easel.Write(limit, room.X, first, Face.Plain, Tone.Ink);
        if (grid.IsWide) easel.Write(legend, room.X, legendTop + grid.Small, Face.Plain, Tone.Soft);
    }
}
