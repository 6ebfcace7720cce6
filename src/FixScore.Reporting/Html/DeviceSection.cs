using System.Globalization;

namespace FixScore.Reporting.Html;

/// <summary>What the page says of one device: a verdict by each profile, where its points come from, what is missing, the notes.</summary>
sealed class DeviceSection(CultureInfo culture)
{
    const int AllLines = int.MaxValue;

    readonly VerdictText verdict = new(culture);
    readonly NotesText notes = new(culture);
    readonly LineTable lines = new(new(culture));

    public Markup Of(IReadOnlyList<Judgement> judgements) => Markup.Element("section", [("id", judgements[0].Record.Id)], [
        Markup.Element("h2", [judgements[0].Device]),
        Markup.Classed("p", "quiet", [Bench(judgements[0])]),
        .. judgements.Select(Verdict)]);

    static string Bench(Judgement judgement)
    {
        var assessment = judgement.Record.Assessment;
        return $"Record {judgement.Record.Id}, by {assessment.Assessor}, {assessment.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, units {string.Join(", ", assessment.Units.Select(unit => unit.Id))}";
    }

    Markup Verdict(Judgement judgement) => Markup.Classed("div", "verdict", [
        Markup.Element("h3", [judgement.Profile.Title]),
        Markup.Element("p", [Markup.Element("strong", [verdict.Total(judgement)]), ". ", verdict.Known(judgement), " ", verdict.Limit(judgement)]),
        lines.Of(judgement, deepest: 1),
        Missing(judgement),
        Cautions(judgement),
        Folded("Every line", lines.Of(judgement, AllLines)),
        Folded("Assessor\u2019s notes: what was observed, which rule, how many points", Notes(judgement))]);

    static Markup Missing(Judgement judgement)
    {
        var missing = VerdictText.Missing(judgement);
        return missing.IsEmpty ? Markup.Nothing : Folded("What would narrow it", Markup.List(missing.Select(text => (Markup)text)));
    }

    Markup Cautions(Judgement judgement) => Markup.Classed("div", "quiet", [Markup.List(notes.Cautions(judgement).Select(line => (Markup)line.Text))]);

    static Markup Folded(string title, Markup content) => Markup.Element("details", [Markup.Element("summary", [title]), content]);

    Markup Notes(Judgement judgement) => Markup.Element("ul", [("class", "notes")], [.. notes.Criteria(judgement).Select(line =>
        Markup.Classed("li", $"{Word.Of(line.Kind)} level-{line.Level.ToString(CultureInfo.InvariantCulture)}", [Label(line.Kind), line.Text]))]);

    static Markup Label(NoteKind kind) => kind switch
    {
        NoteKind.Missing => Markup.Element("b", ["Would narrow it: "]),
        NoteKind.Caution => Markup.Element("b", ["Mind: "]),
        NoteKind.Rule => Markup.Element("b", ["Rule: "]),
        _ => Markup.Nothing,
    };
}
