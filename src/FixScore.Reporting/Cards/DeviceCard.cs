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
        var foot = Legend(easel, judgement, CardFoot.Draw(easel, grid, [judgement]));
        var top = Total(easel, judgement, Head(easel, judgement) + grid.Bar);
        if (grid.IsWide) Columns(easel, judgement, top, foot);
        else Stack(easel, judgement, top, foot);
        return easel.Picture(scheme, $"{judgement.Device}: {text.Verdict(judgement)}",
            $"{judgement.Profile.Title}{text.Meaning(judgement.Profile)}. {text.Known(judgement)} {text.Limit(judgement)} {CardFoot.Told([judgement])}");
    }

    int Head(Easel easel, Judgement judgement)
    {
        easel.Kicker(judgement.Profile.Title, text.Meaning(judgement.Profile));
        var name = Paragraph.Fit(judgement.Device, Face.Heading, grid.Inner, grid.Heading);
        var baseline = easel.Write(name, grid.Margin, grid.Top + name.Size + grid.Kicker / 4, Face.Heading, Tone.Ink);
        var verdict = Paragraph.Fit(text.Verdict(judgement), Face.Serif, grid.Inner, grid.Sentence);
        return easel.Write(verdict, grid.Margin, baseline + verdict.Size * 8 / 5, Face.Serif, Tone.Ink);
    }

    int Total(Easel easel, Judgement judgement, int top)
    {
        var (scale, total) = (judgement.Profile.Scale, judgement.Score.Total);
        var track = new Box(grid.Margin, top, grid.Inner, grid.Bar);
        easel.Ruler(track, Ticks);
        easel.Bar(track, (total.Low - scale.Min) / (scale.Max - scale.Min), (total.High - scale.Min) / (scale.Max - scale.Min));
        var baseline = track.Bottom + grid.Small * 8 / 5;
        easel.Numbers(track, Ticks, baseline, tick => text.Tick(scale, tick, Ticks));
        return baseline;
    }

    int Legend(Easel easel, Judgement judgement, int foot)
    {
        easel.Write(Paragraph.OneLine(grid.IsWide ? text.Known(judgement) : CardText.Legend, Face.Plain, grid.Small, grid.Inner), grid.Margin, foot - grid.Small, Face.Plain, grid.Small, Tone.Soft);
        return foot - grid.Small * 3;
    }

    void Columns(Easel easel, Judgement judgement, int above, int bottom)
    {
        const int Gap = 88;
        var left = grid.Inner * 60 / 100;
        var baseline = above + grid.Subheading * 9 / 4;
        new LineBars(easel, grid, text).Draw(judgement, new(grid.Margin, baseline, left, bottom - baseline));
        Limit(easel, judgement, new(grid.Margin + left + Gap, baseline, grid.Inner - left - Gap, bottom - baseline));
    }

    void Stack(Easel easel, Judgement judgement, int above, int bottom)
    {
        const int LimitLines = 2;
        var baseline = above + grid.Subheading * 2;
        var limit = bottom - LimitLines * grid.LabelStep - grid.Subheading / 3;
        new LineBars(easel, grid, text).Draw(judgement, new(grid.Margin, baseline, grid.Inner, limit - grid.Subheading * 3 / 2 - baseline));
        Limit(easel, judgement, new(grid.Margin, limit, grid.Inner, bottom - limit));
    }

    void Limit(Easel easel, Judgement judgement, Box room)
    {
        easel.Write("What limits it most", room.X, room.Y, Face.Heading, grid.Subheading, Tone.Ink);
        var first = room.Y + grid.Subheading / 3 + grid.LabelStep;
        var lines = Math.Max(1, (room.Bottom - first) / grid.LabelStep + 1);
        easel.Write(Paragraph.Fit(text.Limit(judgement), Face.Plain, room.Width, new Setting(grid.Label, lines)), room.X, first, Face.Plain, Tone.Ink);
    }
}
