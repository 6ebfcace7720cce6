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
        var top = Head(easel, ranked) + grid.Label;
        var bottom = Legend(easel, ranked, foot);
        Rows(easel, ranked, scale, new(grid.Margin, top, grid.Inner, bottom - top));
        return easel.Picture(scheme, $"{CardText.Headline(ranked)}.", $"{judgements[0].Profile.Title}{text.Meaning(judgements[0].Profile)}. {string.Join("; ", ranked.Select(Told))}. {CardFoot.Told(judgements)}");
    }

    string Told(Placing each) => $"{text.Place(each)}: {each.Judgement.Device}, {text.Verdict(each.Judgement).TrimEnd('.')}";

    int Head(Easel easel, IReadOnlyList<Placing> ranked)
    {
        easel.Kicker(ranked[0].Judgement.Profile.Title, text.Meaning(ranked[0].Judgement.Profile));
        var headline = Paragraph.Fit(CardText.Headline(ranked), Face.Heading, grid.Inner, grid.Headline);
        return easel.Write(headline, grid.Margin, grid.Top + headline.Size + grid.Kicker / 4, Face.Heading, Tone.Ink);
    }

    int Legend(Easel easel, IReadOnlyList<Placing> ranked, int foot)
    {
        var open = ranked.Any(each => each.Best < each.Worst) ? " A range of places is not settled: the totals overlap." : "";
        var legend = Paragraph.Fit(CardText.Legend + open, Face.Plain, grid.Inner, new Setting(grid.Small, 2));
        var first = foot - grid.Small - (legend.Lines.Length - 1) * (grid.Small * 142 / 100);
        easel.Write(legend, grid.Margin, first, Face.Plain, Tone.Soft);
        return first - grid.Small * 3 / 2;
    }

    void Rows(Easel easel, IReadOnlyList<Placing> ranked, ProfileScale scale, Box room)
    {
        var drawn = ranked.Count <= grid.Rows ? ranked.Count : grid.Rows - 1;
        var places = ranked.Take(drawn).Max(each => Advances.Of(text.Place(each), Face.Heading, grid.Subheading));
        var plot = new Box(room.X + places + Gap, room.Y, room.Width - places - Gap, room.Height - grid.Small * (drawn < ranked.Count ? 3 : 2));
        var step = Math.Min(plot.Height / drawn, grid.Subheading * 5);
        var bottom = plot.Y;
        for (var row = 0; row < drawn; row++) bottom = Row(easel, ranked[row], scale, plot with { Y = plot.Y + row * step, Height = step });
        easel.Numbers(plot, Ticks, bottom + grid.Small * 8 / 5, tick => text.Tick(scale, tick, Ticks));
        if (drawn < ranked.Count)
            easel.Write($"and {ranked.Count - drawn} more below", plot.X, bottom + grid.Small * 16 / 5, Face.Plain, grid.Small, Tone.Soft);
    }

    /// <summary>Draws a row and gives where its bar ends.</summary>
    int Row(Easel easel, Placing each, ProfileScale scale, Box room)
    {
        var (size, height) = (grid.Subheading, Math.Min(grid.Bar * 3 / 4, room.Height / 3));
        var baseline = room.Y + (room.Height - height - size) / 2 + size * 3 / 4;
        var (points, total) = (text.Points(each.Judgement), each.Judgement.Score.Total);
        var name = Paragraph.OneLine(each.Judgement.Device, Face.Plain, size, room.Width - Advances.Of(points, Face.Plain, size) - Gap);
        easel.Write(text.Place(each), grid.Margin, baseline, Face.Heading, size, Tone.Ink);
        easel.Write(name, room.X, baseline, Face.Plain, size, Tone.Ink);
        easel.Write(points, room.Right, baseline, Face.Plain, size, Tone.Ink, Anchor.End);
        var track = new Box(room.X, baseline + size / 2, room.Width, height);
        easel.Ruler(track, Ticks);
        easel.Bar(track, (total.Low - scale.Min) / (scale.Max - scale.Min), (total.High - scale.Min) / (scale.Max - scale.Min));
        return track.Bottom;
    }
}
