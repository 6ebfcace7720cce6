using System.Collections.Immutable;
using System.Globalization;

namespace FixScore.Reporting.Html;

/// <summary>The sections of the summary page.</summary>
sealed class SummarySections(CultureInfo culture)
{
    readonly Shown shown = new(culture);
    readonly AssessorNotes notes = new(culture);

    public Markup Ranking(IReadOnlyList<Judgement> ranked)
    {
        var profile = ranked[0].Profile;
        return Markup.Element("section", [
            Markup.Element("h2", [$"By the profile \u201C{profile.Title}\u201D"]),
            Markup.Classed("p", "note", [profile.Note ?? ""]),
            Markup.Element("figure", [IntervalChart.Of(ranked, shown), Markup.Element("figcaption",
                ["Solid: certain whatever the open observations turn out to be. Hatched: depends on them. Where hatched parts overlap, the order is not settled."])]),
            Markup.Element("ul", [.. profile.Notices.Select(notice => Markup.Element("li", [notice]))])]);
    }

    public Markup Device(ImmutableArray<Judgement> judgements) => Markup.Element("section", [
        Markup.Element("h2", [judgements[0].Device]),
        .. judgements.Select(Verdict),
        Contributions(judgements[0]),
        Markup.Element("details", [Markup.Element("summary", [$"Assessor\u2019s notes, \u201C{judgements[0].Profile.Title}\u201D"]), Notes(judgements[0])])]);

    Markup Verdict(Judgement each) => Markup.Classed("p", "verdict", [
        $"{each.Profile.Title}: ", Markup.Element("strong", [$"{shown.Points(each.Score.Shown)} points"]),
        $" on a scale from {shown.Number(each.Profile.Scale.Min)} to {shown.Number(each.Profile.Scale.Max)}{ClassText(each.Score)}. ",
        $"{shown.Percent(each.Score.Coverage)} of the weight is fully known. ",
        LimitText(each),
        string.Concat(each.Score.Gates.Select(gate => " " + notes.GateText(gate)))]);

    string LimitText(Judgement each) => each.Limit is { } limit
        ? $"What limits it most: {limit.Title} ({limit.Path}); at its best the low end would rise by {shown.Number(decimal.Round(limit.Headroom, 1))}."
        : "";

    static string ClassText(ScoreDocument score) => score.Class is not { } range ? ""
        : range.Low == range.High ? $", \u201C{range.Low}\u201D" : $", \u201C{range.Low}\u201D to \u201C{range.High}\u201D";

    Markup Contributions(Judgement each) => Markup.Classed("div", "scroll", [Markup.Element("table", [
        Markup.Element("caption", [$"Points by \u201C{each.Profile.Title}\u201D"]),
        Markup.Element("thead", [Row("th", ["Line", "Points", "Weight", "Of the total", "Headroom"])]),
        Markup.Element("tbody", [.. each.Score.Nodes.Where(node => Depth(node) <= 2).Select(Line)])])]);

    Markup Line(ScoreNode node) => Row("td", [
        Markup.Classed("span", $"depth-{Depth(node)}", [node.Title]),
        shown.Points(node.Shown),
        node.Weight is { } weight ? shown.Number(weight) : "",
        node.Contribution is { } ends ? shown.Points(Between(ends)) : "",
        shown.Short(node.Headroom)]);

    static Interval Between(Ends ends)
    {
        var (low, high) = (decimal.Round(ends.Low, 1), decimal.Round(ends.High, 1));
        return new(Math.Min(low, high), Math.Max(low, high));
    }

    static int Depth(ScoreNode node) => node.Path.Count(letter => letter == '/');

    static Markup Row(string cell, IEnumerable<Markup> cells) =>
        Markup.Element("tr", [.. cells.Select((content, index) => cell == "th"
            ? Markup.Element("th", [("scope", "col")], [content])
            : index == 0 ? Markup.Element("th", [("scope", "row")], [content]) : Markup.Element("td", [content]))]);

    Markup Notes(Judgement each) => Markup.Element("ul", [("class", "notes")], [.. notes.Of(each).Select(line =>
        Markup.Classed("li", $"{Word.Of(line.Kind)} level-{line.Level}", [Label(line.Kind), line.Text]))]);

    static Markup Label(NoteKind kind) => kind switch
    {
        NoteKind.Missing => Markup.Element("b", ["Would narrow it: "]),
        NoteKind.Caution => Markup.Element("b", ["Mind: "]),
        NoteKind.Rule => Markup.Element("b", ["Rule: "]),
        _ => Markup.Nothing,
    };

    public Markup Cautions(ImmutableArray<Judgement> judgements) => Markup.Element("section", [
        Markup.Element("h2", ["Before anyone opens a device"]),
        Markup.Element("ul", [.. SafetyText.For(judgements.Select(each => each.Record)).Select(text => Markup.Element("li", [text]))])]);

    public Markup Reproduction(ImmutableArray<Judgement> judgements) => Markup.Element("section", [
        Markup.Element("h2", ["To check this"]),
        Markup.Element("p", ["Anyone with the records, the profiles and the same plugin versions gets the same bytes. ", Markup.Element("code", ["fixscore verify SCORE --record RECORD"]), " compares."]),
        Markup.Classed("div", "scroll", [Markup.Element("table", [
            Markup.Element("thead", [Row("th", ["Record", "Profile", "Record digest", "Score digest"])]),
            Markup.Element("tbody", [.. judgements.Select(each => Row("td", [
                each.Record.Id, $"{each.Score.Profile.Id} {each.Score.Profile.Version}",
                Markup.Element("code", [each.Score.Record.Digest]), Markup.Element("code", [each.Score.ComputeDigest()])]))])])]),
        Markup.Element("p", [$"Kernel {judgements[0].Score.KernelVersion}; plugins: {string.Join(", ", judgements.SelectMany(each => each.Score.Plugins).Distinct().OrderBy(p => p.Id, StringComparer.Ordinal).Select(p => $"{p.Id} {p.Version}"))}."])]);
}
