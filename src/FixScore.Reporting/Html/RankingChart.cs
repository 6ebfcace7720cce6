namespace FixScore.Reporting.Html;

/// <summary>A ranking drawn as bars on the profile's scale.</summary>
static class RankingChart
{
    const int RowHeight = 52;
    const int BarTop = 26;
    const int BarHeight = 14;
    const int Ticks = 4;
    const int LongestName = 36;

    public static Markup Of(IReadOnlyList<Placing> ranked, Shown shown)
    {
        var scale = ranked[0].Judgement.Profile.Scale;
        var foot = ranked.Count * RowHeight;
        return Markup.Element("svg",
            [("class", "chart"), ("width", "100%"), ("height", IntervalBar.Text(foot + 24)), ("role", "img"), ("aria-label", Summary(ranked, shown))],
            [Axis(scale, foot, shown), .. ranked.Select((each, row) => Row(each, row * RowHeight, scale, shown))]);
    }

    public static string Summary(IReadOnlyList<Placing> ranked, Shown shown) =>
        string.Join("; ", ranked.Select(each => $"{shown.Place(each)}: {each.Judgement.Device}, {shown.Points(each.Judgement.Score.Shown)}"));

    static Markup Axis(ProfileScale scale, int foot, Shown shown) => Markup.Join([.. Enumerable.Range(0, Ticks + 1).Select(tick =>
    {
        var at = IntervalBar.Percent((decimal)tick / Ticks);
        return Markup.Join(
            IntervalBar.Shape("line", "grid", ("x1", at), ("x2", at), ("y1", "0"), ("y2", IntervalBar.Text(foot + 4))),
            Label("tick", at, foot + 19, shown.Short(scale.Min + (scale.Max - scale.Min) * tick / Ticks), tick == 0 ? "start" : tick == Ticks ? "end" : "middle"));
    })]);

    static Markup Row(Placing each, int top, ProfileScale scale, Shown shown) => Markup.Join(
        Label("name", "0", top + 18, $"{shown.Place(each)}.  {Cut(each.Judgement.Device)}", "start"),
        Label("points", "100%", top + 18, shown.Points(each.Judgement.Score.Shown), "end"),
        IntervalBar.Bar(each.Judgement.Score.Total, scale.Points, top + BarTop, BarHeight));

    static Markup Label(string cssClass, string x, int y, string text, string anchor) =>
        Markup.Element("text", [("class", cssClass), ("x", x), ("y", IntervalBar.Text(y)), ("text-anchor", anchor)], (Markup)text);

    // A drawing cannot wrap; the whole name stands in the heading of the device's own section.
    static string Cut(string name) => name.Length <= LongestName ? name : name[..(LongestName - (char.IsHighSurrogate(name[LongestName - 2]) ? 2 : 1))] + "\u2026";
}
