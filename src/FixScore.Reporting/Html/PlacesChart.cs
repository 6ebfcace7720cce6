using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Comparing;
using FixScore.Analysis.Ranking;

namespace FixScore.Reporting.Html;

/// <summary>Places from profile to profile: a column for each profile, the first place at the top, a line for each device.</summary>
/// <remarks>Devices that are level stand below each other all the same; the place written in each mark says that they are. Lines are told apart by dashes and by their names at both ends.</remarks>
static class PlacesChart
{
    const int NameWidth = 190;
    const int ColumnWidth = 170;
    const int RowHeight = 44;
    const int Head = 34;
    const int MarkWidth = 46;
    const int MarkHeight = 24;
    const int LongestName = 22;
    const int LongestProfile = 20;
    const int DashPatterns = 5;

    public static Markup Of(ProfileComparison comparison, ImmutableArray<string> names)
    {
        var (width, height) = ((2 * NameWidth) + (ColumnWidth * (comparison.Profiles.Length - 1)) + MarkWidth, Head + (RowHeight * names.Length));
        var slots = Enumerable.Range(0, comparison.Profiles.Length).Select(profile => Slots(comparison, profile)).ToArray();
        return Markup.Element("svg",
            [("class", "places"), ("viewBox", $"0 0 {Text(width)} {Text(height)}"), ("width", Text(width)), ("height", Text(height)), ("role", "img"), ("aria-label", Summary(comparison, names))],
            [.. comparison.Profiles.Select((profile, index) => Label("tick", X(index), 16, Cut(profile, LongestProfile), "middle")),
             .. names.Select((name, device) => Device(comparison, slots, name, device))]);
    }

    /// <summary>The same in words.</summary>
    public static string Summary(ProfileComparison comparison, ImmutableArray<string> names) =>
        string.Join("; ", comparison.Profiles.Select((profile, index) => $"{profile}: {string.Join(", ", Enumerable.Range(0, names.Length).OrderBy(device => comparison.Ranks[device][index].Middle).Select(device => $"{Place(comparison.Ranks[device][index])} {names[device]}"))}"));

    // By the middle of the places, then as given.
    static int[] Slots(ProfileComparison comparison, int profile)
    {
        var order = Enumerable.Range(0, comparison.Devices.Length).OrderBy(device => comparison.Ranks[device][profile].Middle).ToArray();
        return [.. Enumerable.Range(0, order.Length).Select(device => Array.IndexOf(order, device))];
    }

    static Markup Device(ProfileComparison comparison, int[][] slots, string name, int device)
    {
        var points = slots.Select((slot, profile) => $"{Text(X(profile))},{Text(Y(slot[device]))}");
        return Markup.Join([
            Markup.Element("polyline", [("class", $"line dash-{Text(device % DashPatterns)}"), ("points", string.Join(' ', points))]),
            Label("name", NameWidth - (MarkWidth / 2), Y(slots[0][device]) + 5, Cut(name, LongestName), "end"),
            Label("name", X(slots.Length - 1) + (MarkWidth / 2) + 8, Y(slots[^1][device]) + 5, Cut(name, LongestName), "start"),
            .. slots.Select((slot, profile) => Mark(comparison.Ranks[device][profile], X(profile), Y(slot[device])))]);
    }

    static Markup Mark(Rank rank, int x, int y) => Markup.Join(
        IntervalBar.Shape("rect", "mark", ("x", Text(x - (MarkWidth / 2))), ("y", Text(y - (MarkHeight / 2))), ("width", Text(MarkWidth)), ("height", Text(MarkHeight)), ("rx", "3")),
        Label("place", x, y + 5, Place(rank), "middle"));

    static string Place(Rank rank) => rank.Best == rank.Worst ? Text(rank.Best) : $"{Text(rank.Best)} to {Text(rank.Worst)}";

    static int X(int profile) => NameWidth + 8 + (profile * ColumnWidth);

    static int Y(int slot) => Head + (slot * RowHeight) + (RowHeight / 2);

    static string Cut(string text, int longest) => PlainText.Of(text, longest);

    static Markup Label(string cssClass, int x, int y, string text, string anchor) =>
        Markup.Element("text", [("class", cssClass), ("x", Text(x)), ("y", Text(y)), ("text-anchor", anchor)], (Markup)text);

    static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
