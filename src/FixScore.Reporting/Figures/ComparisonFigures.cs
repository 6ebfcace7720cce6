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
    const int ProfileWidth = 150;

    /// <summary>Places of each unit from profile to profile; a bar through a mark spans places that are not settled.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="names">Names of the units.</param>
    public static byte[] Places(ProfileComparison comparison, ImmutableArray<string> names)
    {
        var model = Drawing.Model("Places");
        model.PlotMargins = new(56, 12, 8, 40);
        model.Axes.Add(Drawing.Names(AxisPosition.Bottom, comparison.Profiles, more: Drawing.RoomFor(names) / ProfileWidth));
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Left, StartPosition = 1, EndPosition = 0, Minimum = 0.5, Maximum = names.Length + 0.5, MajorStep = Math.Max(1, names.Length / 10), MinorTickSize = 0,
            Title = "place, 1 is best", AxisTitleDistance = 14,
        });
        for (var unit = 0; unit < names.Length; unit++) AddPlaces(model, comparison, unit);
        AddNames(model, comparison, names);
        return Drawing.Svg(model, (int)Drawing.RoomFor(names) + 80 + (ProfileWidth * comparison.Profiles.Length), 100 + (44 * names.Length));
    }

    /// <summary>Scores of each unit by one profile, a bar from the low to the high end.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="names">Names of the units.</param>
    /// <param name="profile">Number of the profile.</param>
    public static byte[] Scores(ProfileComparison comparison, ImmutableArray<string> names, int profile)
    {
        var model = Drawing.Model($"Scores by {comparison.Profiles[profile]}");
        model.PlotMargins = new(Drawing.RoomFor(names), 12, 24, 52);
        model.Axes.Add(Drawing.Names(AxisPosition.Left, names, reversed: true));
        model.Axes.Add(new LinearAxis { Position = AxisPosition.Bottom, Title = "points; a bar spans what open observations allow", MinorTickSize = 0, AxisTitleDistance = 12, MinimumPadding = 0.05, MaximumPadding = 0.05 });
        for (var unit = 0; unit < names.Length; unit++) AddBar(model, comparison.Scores[unit][profile], unit);
        return Drawing.Svg(model, 720, 110 + (36 * names.Length));
    }

    static void AddPlaces(PlotModel model, ProfileComparison comparison, int unit)
    {
        var (colour, marker) = (Drawing.Colours[unit % Drawing.Colours.Length], Drawing.Markers[unit % Drawing.Markers.Length]);
        var line = new LineSeries
        {
            Color = colour, MarkerType = marker, MarkerSize = 5, MarkerFill = colour, MarkerStroke = colour, StrokeThickness = 1.5,
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

    // Each line has its name at its end; names of level units stand below one another.
    static void AddNames(PlotModel model, ProfileComparison comparison, ImmutableArray<string> names)
    {
        var (last, below) = (comparison.Profiles.Length - 1, double.NegativeInfinity);
        foreach (var unit in Enumerable.Range(0, names.Length).OrderBy(unit => comparison.Ranks[unit][last].Middle))
        {
            below = Math.Max((double)comparison.Ranks[unit][last].Middle, below + 0.42);
            model.Annotations.Add(new TextAnnotation
            {
                Text = Drawing.Short(names[unit]), TextPosition = new(last + 0.15, below), TextColor = model.TextColor, StrokeThickness = 0,
                TextHorizontalAlignment = HorizontalAlignment.Left, TextVerticalAlignment = VerticalAlignment.Middle, FontWeight = 600,
            });
        }
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
