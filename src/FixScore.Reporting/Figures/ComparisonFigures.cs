using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace FixScore.Reporting.Figures;

/// <summary>Figures of a comparison as SVG: the same bytes for the same comparison.</summary>
public static class ComparisonFigures
{
    /// <summary>Places of each unit from profile to profile; a bar through a mark spans places that are not settled.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="names">Names of the units.</param>
    public static byte[] Places(ProfileComparison comparison, ImmutableArray<string> names)
    {
        var model = Drawing.Model("Places");
        model.Legends.Add(Drawing.Legend);
        model.Axes.Add(Drawing.Names(AxisPosition.Bottom, comparison.Profiles));
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Left, StartPosition = 1, EndPosition = 0, Minimum = 0.5, Maximum = names.Length + 0.5, MajorStep = Math.Max(1, names.Length / 10), MinorTickSize = 0,
            Title = "place, 1 is best",
        });
        for (var unit = 0; unit < names.Length; unit++) AddPlaces(model, comparison, names[unit], unit);
        return Drawing.Svg(model, 260 + (150 * comparison.Profiles.Length), Math.Max(320, 120 + (28 * names.Length)));
    }

    /// <summary>Scores of each unit by one profile, a bar from the low to the high end.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="names">Names of the units.</param>
    /// <param name="profile">Number of the profile.</param>
    public static byte[] Scores(ProfileComparison comparison, ImmutableArray<string> names, int profile)
    {
        var model = Drawing.Model($"Scores by {comparison.Profiles[profile]}");
        model.Axes.Add(Drawing.Names(AxisPosition.Left, names, reversed: true));
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Title = "points; a bar spans what open observations allow", MinorTickSize = 0, MinimumPadding = 0.05, MaximumPadding = 0.05 });
        for (var unit = 0; unit < names.Length; unit++) AddBar(model, comparison.Scores[unit][profile], unit);
        return Drawing.Svg(model, 720, 110 + (36 * names.Length));
    }

    static void AddPlaces(PlotModel model, ProfileComparison comparison, string name, int unit)
    {
        var (colour, marker) = (Drawing.Colours[unit % Drawing.Colours.Length], Drawing.Markers[unit % Drawing.Markers.Length]);
        var line = new LineSeries
        {
            Title = name, Color = colour, MarkerType = marker, MarkerSize = 5, MarkerFill = colour, MarkerStroke = colour, StrokeThickness = 1.5,
            LineStyle = unit < Drawing.Colours.Length ? LineStyle.Solid : LineStyle.Dash,
        };
        var shift = (unit - (comparison.Devices.Length / 2.0)) * 0.02;
        for (var profile = 0; profile < comparison.Profiles.Length; profile++)
        {
            var rank = comparison.Ranks[unit][profile];
            line.Points.Add(new(profile + shift, (double)rank.Middle));
            if (rank.Best < rank.Worst) model.Annotations.Add(Bar(profile + shift, rank.Best, profile + shift, rank.Worst, colour, 3));
        }
        model.Series.Add(line);
    }

    static void AddBar(PlotModel model, Interval score, int unit)
    {
        var (low, high) = ((double)score.Low, (double)score.High);
        model.Annotations.Add(Bar(low, unit, high, unit, Drawing.Colours[0], 9));
        var ends = new ScatterSeries { MarkerType = MarkerType.Diamond, MarkerSize = 6, MarkerFill = Drawing.Colours[0] };
        ends.Points.Add(new(low, unit));
        ends.Points.Add(new(high, unit));
        model.Series.Add(ends);
    }

    static PolylineAnnotation Bar(double x1, double y1, double x2, double y2, OxyColor colour, double thickness)
    {
        var bar = new PolylineAnnotation { Color = OxyColor.FromAColor(0x90, colour), StrokeThickness = thickness, LineStyle = LineStyle.Solid, Layer = AnnotationLayer.BelowSeries };
        bar.Points.Add(new(x1, y1));
        bar.Points.Add(new(x2, y2));
        return bar;
    }
}
