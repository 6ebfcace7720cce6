using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FixScore.Reporting.Figures;

/// <summary>Figures of what weights do to a ranking, as SVG: the same bytes for the same study.</summary>
public static class StudyFigures
{
    const double Narrowest = 0.08;

    /// <summary>Acceptability of ranks: for each unit a bar of the shares of weights that give it each place, the best place first and darkest. Shares of 8 % or more have their place written in.</summary>
    /// <param name="study">The study.</param>
    /// <param name="names">Names of the units.</param>
    public static byte[] Acceptability(WeightStudy study, ImmutableArray<string> names)
    {
        var model = Drawing.Model($"Rank acceptability, {study.Name}");
        model.PlotMargins = new(Drawing.RoomFor(names), 12, 24, 52);
        model.Axes.Add(Drawing.Names(AxisPosition.Left, names, reversed: true));
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Bottom, Minimum = 0, Maximum = 100, MajorStep = 20, MinorTickSize = 0, AxisTitleDistance = 12,
            Title = "% of weights that give a place; the number in a bar is the place",
        });
        for (var place = 1; place <= names.Length; place++) model.Series.Add(Place(study, place));
        return Drawing.Svg(model, 720, 110 + (36 * names.Length));
    }

    static RectangleBarSeries Place(WeightStudy study, int place)
    {
        var (fill, text) = Shade(place, study.Table.Units.Length);
        var series = new RectangleBarSeries { FillColor = fill, StrokeColor = OxyColors.White, StrokeThickness = 1, TextColor = text, FontSize = 12 };
        for (var unit = 0; unit < study.Table.Units.Length; unit++)
        {
            var (start, share) = (Enumerable.Range(1, place - 1).Sum(better => study.Share(unit, better)), study.Share(unit, place));
            if (share > 0)
                series.Items.Add(new(Percent(start), unit - 0.32, Percent(start + share), unit + 0.32) { Title = share < Narrowest ? null : place.ToString(System.Globalization.CultureInfo.InvariantCulture) });
        }
        return series;
    }

    // From dark to light, so that the order of places shows in print without colour too.
    static (OxyColor Fill, OxyColor Text) Shade(int place, int places)
    {
        var light = places == 1 ? 0 : 0.85 * (place - 1) / (places - 1);
        var dark = Drawing.Colours[0];
        return (OxyColor.FromRgb(Lighter(dark.R, light), Lighter(dark.G, light), Lighter(dark.B, light)), light < 0.3 ? OxyColors.White : OxyColor.FromRgb(0x22, 0x22, 0x22));
    }

    static byte Lighter(byte channel, double light) => (byte)(channel + ((255 - channel) * light));

    // Rounded, so that the last bits of a share do not show.
    static double Percent(double share) => (double)decimal.Round((decimal)share * 100m, 3);
}
