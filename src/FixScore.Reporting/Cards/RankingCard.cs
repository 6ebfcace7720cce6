using System.Globalization;

namespace FixScore.Reporting.Cards;

/// <summary>The card of several devices.</summary>
sealed class RankingCard(CardGrid grid, CultureInfo culture)
{
    const int Ticks = 4;
    const int Gap = 32;

    readonly CardText text = new(culture);

    public Picture Of(IReadOnlyList<Placing> ranked, CardScheme scheme)
    {
        var easel = new Easel(grid);
        var scale = ranked[0].Judgement.Profile.Scale;
        Judgement[] judgements = [.. ranked.Select(each => each.Judgement)];
        var foot = CardFoot.Draw(easel, grid, judgements);
        var top = Head(easel, ranked, scale) + grid.Label;
        var bottom = Legend(easel, ranked, foot);
        Rows(easel, ranked, scale, new(grid.Margin, top, grid.Inner, bottom - top));
        return easel.Picture(scheme, $"{CardText.Headline(ranked)}.", $"{string.Join("; ", ranked.Select(Told))}. {CardFoot.Told(judgements)}");
    }

    string Told(Placing each) => $"{text.Place(each)}: {each.Judgement.Device}, {text.Verdict(each.Judgement).TrimEnd('.')}";

    int Head(Easel easel, IReadOnlyList<Placing> ranked, ProfileScale scale)
    {
        var kicker = $"{ranked[0].Judgement.Profile.Title}: points on {text.Scale(scale)}, more is better";
        easel.Write(Paragraph.OneLine(kicker, Face.Plain, grid.Kicker, grid.Inner), grid.Margin, grid.Top, Face.Plain, grid.Kicker, Tone.Soft);
        var headline = Paragraph.Fit(CardText.Headline(ranked), Face.Heading, grid.Inner, grid.IsWide ? 1 : 2, grid.Heading);
        return easel.Write(headline, grid.Margin, grid.Top + headline.Size + grid.Kicker / 4, Face.Heading, Tone.Ink);
    }

    int Legend(Easel easel, IReadOnlyList<Placing> ranked, int foot)
    {
        var open = ranked.Any(each => each.Best < each.Worst) ? " A range of places is not settled: the totals overlap." : "";
        var legend = Paragraph.Fit(CardText.Legend + open, Face.Plain, grid.Inner, 2, grid.Small);
        var first = foot - grid.Small - (legend.Lines.Length - 1) * (grid.Small * 142 / 100);
        easel.Write(legend, grid.Margin, first, Face.Plain, Tone.Soft);
        return first - grid.Small * 3 / 2;
    }

    void Rows(Easel easel, IReadOnlyList<Placing> ranked, ProfileScale scale, Box room)
    {
        var drawn = ranked.Count <= grid.Rows ? ranked.Count : grid.Rows - 1;
        var places = ranked.Take(drawn).Max(each => Advances.Of(text.Place(each), Face.Heading, grid.Subheading));
        var plot = new Box(room.X + places + Gap, room.Y, room.Width - places - Gap, room.Height - grid.Small * 2);
        var step = plot.Height / Math.Min(ranked.Count, grid.Rows);
        Axis(easel, plot, scale);
        for (var row = 0; row < drawn; row++) Row(easel, ranked[row], scale, plot with { Y = plot.Y + row * step, Height = step });
        if (drawn < ranked.Count)
            easel.Write($"and {ranked.Count - drawn} more below", plot.X, plot.Y + drawn * step + step / 2, Face.Plain, grid.Label, Tone.Soft);
    }

    void Axis(Easel easel, Box plot, ProfileScale scale)
    {
        for (var tick = 0; tick <= Ticks; tick++)
        {
            var x = plot.X + (plot.Width - 2) * tick / Ticks;
            easel.Fill(new(x, plot.Y, 2, plot.Height + grid.Small / 3), Tone.Rule);
            easel.Write(text.Number(scale.Min + (scale.Max - scale.Min) * tick / Ticks, scale), x + (tick == Ticks ? 2 : 0), plot.Bottom + grid.Small * 3 / 2,
                Face.Plain, grid.Small, Tone.Soft, tick == 0 ? Anchor.Start : tick == Ticks ? Anchor.End : Anchor.Middle);
        }
    }

    void Row(Easel easel, Placing each, ProfileScale scale, Box room)
    {
        var (size, bar) = (grid.Subheading, Math.Min(grid.Bar * 3 / 4, room.Height / 3));
        var baseline = room.Y + (room.Height - bar - size) / 2 + size * 3 / 4;
        var points = text.Points(each.Judgement);
        var name = Paragraph.OneLine(each.Judgement.Device, Face.Plain, size, room.Width - Advances.Of(points, Face.Plain, size) - Gap);
        easel.Write(text.Place(each), grid.Margin, baseline, Face.Heading, size, Tone.Ink);
        easel.Write(name, room.X, baseline, Face.Plain, size, Tone.Ink);
        easel.Write(points, room.Right, baseline, Face.Plain, size, Tone.Ink, Anchor.End);
        var total = each.Judgement.Score.Total;
        easel.Bar(new(room.X, baseline + size / 2, room.Width, bar), (total.Low - scale.Min) / (scale.Max - scale.Min), (total.High - scale.Min) / (scale.Max - scale.Min));
    }
}
