using System.Collections.Immutable;
using System.Globalization;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Reports;

/// <summary>One score: the verdict, where its points come from, and every criterion down to the last observation.</summary>
sealed class JudgementSection(CultureInfo culture)
{
    readonly Shown shown = new(culture);
    readonly VerdictText verdict = new(culture);
    readonly NotesText notes = new(culture);
    readonly LinesSection lines = new(culture);

    /// <summary>The score by the profile that decides the order.</summary>
    public IEnumerable<Block> Of(Judgement judgement) =>
    [
        new Prose($"{verdict.Total(judgement)}.", Tone.Lead),
        new Prose($"{verdict.Limit(judgement)} {verdict.Known(judgement)}".Trim()),
        new Picture(ContributionChart.Of(judgement, shown), ContributionChart.Summary(judgement, shown), Caption(judgement)) { AsTable = ContributionChart.Table(Short(judgement), judgement, shown) },
        new Items(Items(notes.Cautions(judgement, everyReading: false).Where(line => !judgement.Profile.Notices.Contains(line.Text)))),
        Missing(judgement),
        lines.Of(judgement),
        Criteria(judgement),
    ];

    /// <summary>The score by another profile, closed until asked.</summary>
    public Section Other(Judgement judgement) =>
        new($"By \u201C{judgement.Profile.Title}\u201D", [.. Of(judgement)]) { IsFolded = true, Gist = $"{verdict.Total(judgement)}" };

    static string Caption(Judgement judgement) => judgement.AddsUp
        ? $"What each line adds to the total by \u201C{judgement.Profile.Title}\u201D: as long as it could add, solid where it does for certain, hatched where it may."
        : $"Points of each line by \u201C{judgement.Profile.Title}\u201D; the total is no sum of them.";

    static string Short(Judgement judgement) => judgement.AddsUp ? "What each line adds to the total, of what it could" : "Points of each line; the total is no sum of them";

    static Section Missing(Judgement judgement)
    {
        var missing = VerdictText.Missing(judgement);
        return new("What would narrow it", [missing.IsEmpty ? new Prose("Nothing: all that the rules ask for was observed.") : Blocks.Items.Of(missing)])
        {
            IsFolded = true,
            Gist = missing.IsEmpty ? "nothing is open" : string.Create(CultureInfo.InvariantCulture, $"{missing.Length} open {(missing.Length == 1 ? "observation" : "observations")}"),
        };
    }

    Section Criteria(Judgement judgement) => new("Criterion by criterion", [.. Grouped(notes.Criteria(judgement)).Select(group => Criterion(judgement, group))])
    {
        IsFolded = true,
        Gist = string.Create(CultureInfo.InvariantCulture, $"{judgement.Criteria.Count()} criteria with observations, points and evidence"),
    };

    static Section Criterion(Judgement judgement, ImmutableArray<NoteLine> group) => new(group[0].Text, [new Items(Items(group.Skip(1).Where(line => line.Kind != NoteKind.Rule)))]);

    // A heading without indent begins the next criterion.
    static IEnumerable<ImmutableArray<NoteLine>> Grouped(ImmutableArray<NoteLine> lines)
    {
        int[] starts = [.. lines.Index().Where(line => line.Item is { Level: 0, Kind: NoteKind.Heading }).Select(line => line.Index)];
        return starts.Zip(starts.Skip(1).Append(lines.Length), (from, to) => lines[from..to]);
    }

    static ImmutableArray<Item> Items(IEnumerable<NoteLine> lines) => [.. lines.Select(line => new Item(line.Text, ToneOf(line.Kind), Math.Max(0, line.Level - 1)) { Label = Label(line.Kind) })];

    static Tone ToneOf(NoteKind kind) => kind switch
    {
        NoteKind.Missing => Tone.Open,
        NoteKind.Caution => Tone.Mind,
        NoteKind.Rule => Tone.Quiet,
        NoteKind.Heading => Tone.Lead,
        _ => Tone.Plain,
    };

    static string Label(NoteKind kind) => kind switch { NoteKind.Missing => "Would narrow it", _ => "" };
}
