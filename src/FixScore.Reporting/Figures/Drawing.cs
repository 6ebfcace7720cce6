using System.Collections.Immutable;
using System.Text;
using OxyPlot;
using OxyPlot.Axes;

namespace FixScore.Reporting.Figures;

/// <summary>What all figures share: colours that differ in lightness as well, so that none is told by colour alone; text stays text.</summary>
static class Drawing
{
    /// <summary>Colours for up to seven series; with more, dashes tell them apart. Source: M. Okabe and K. Ito, Color Universal Design, 2008 (from memory), without yellow.</summary>
    public static readonly OxyColor[] Colours =
    [
        OxyColor.FromRgb(0x00, 0x72, 0xB2), OxyColor.FromRgb(0xD5, 0x5E, 0x00), OxyColor.FromRgb(0x00, 0x9E, 0x73), OxyColor.FromRgb(0xCC, 0x79, 0xA7),
        OxyColor.FromRgb(0x56, 0xB4, 0xE9), OxyColor.FromRgb(0xE6, 0x9F, 0x00), OxyColor.FromRgb(0x33, 0x33, 0x33),
    ];

    public static readonly MarkerType[] Markers =
        [MarkerType.Circle, MarkerType.Square, MarkerType.Triangle, MarkerType.Diamond, MarkerType.Cross, MarkerType.Plus, MarkerType.Star];

    public static PlotModel Model(string title) => new()
    {
        Title = title, DefaultFont = "sans-serif", DefaultFontSize = 13, TitleFontSize = 15, TitleFontWeight = 600, PlotAreaBorderThickness = new(0, 0, 0, 1),
        TextColor = OxyColor.FromRgb(0x22, 0x22, 0x22), Background = OxyColors.White,
    };

    /// <summary>Room for the longest of some texts. Letters are taken as wide as common sans serif ones: no font is at hand to measure, so that the bytes are the same everywhere.</summary>
    public static double RoomFor(IEnumerable<string> texts) => 16 + (7.4 * texts.Select(text => Short(text).Length).DefaultIfEmpty(0).Max());

    public static CategoryAxis Names(AxisPosition position, ImmutableArray<string> names, bool reversed = false, double more = 0) => new()
    {
        Minimum = -0.5, Maximum = names.Length - 0.5 + more, Position = position, ItemsSource = names.Select(Short).ToList(), GapWidth = 0.5, IsTickCentered = true, TickStyle = TickStyle.None,
        StartPosition = reversed ? 1 : 0, EndPosition = reversed ? 0 : 1,
    };

    public static byte[] Svg(PlotModel model, int width, int height)
    {
        using var output = new MemoryStream();
        new SvgExporter { Width = width, Height = height }.Export(model, output);
        var text = Encoding.UTF8.GetString(output.ToArray()).TrimStart('\uFEFF').ReplaceLineEndings("\n");
        return Encoding.UTF8.GetBytes(text);
    }

    public static string Short(string name) => name.Length <= 28 ? name : name[..27] + "…";
}
