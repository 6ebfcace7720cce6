using System.Collections.Immutable;
using System.Globalization;
using FixScore.Analysis.Generations;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Generations side by side: what each line did to the score, and what changed in the device.</summary>
sealed class GenerationSection(CultureInfo culture)
{
    const int MostChanges = 40;

    readonly Shown shown = new(culture);

    public IEnumerable<Section> Of(ReportInput input)
    {
        if (!input.Generations.IsEmpty) yield return new("Against the model before", [.. input.Generations.Select(Of)]) { Anchor = "generations" };
    }

    Section Of(Generation generation)
    {
        var attribution = generation.Attribution;
        return new($"From {Name(generation.Old)} to {Name(generation.New)}",
        [
            new Prose($"By \u201C{generation.Profile.Title}\u201D: {Points(attribution.Old)} points before, {Points(attribution.New)} now."),
            Deltas(attribution),
            new Prose(attribution.IsAdditive ? "Differences of contributions; they add up exactly." : "Shapley values: what each adds on average over all orders of change; they add up exactly.", Tone.Quiet),
            Changes(generation),
        ]);
    }

    Grid Deltas(ScoreAttribution attribution) => new("What did it",
        ["Line", new("Low end", GridKind.Number), new("High end", GridKind.Number), new("Now", GridKind.Text)],
        [.. attribution.Deltas.OrderByDescending(delta => Math.Abs(delta.Low) + Math.Abs(delta.High)).Select(Row),
         ["together", Signed(attribution.New.Low - attribution.Old.Low), Signed(attribution.New.High - attribution.Old.High), ""]]);

    ImmutableArray<GridCell> Row(NodeDelta delta) => [delta.Title, Signed(delta.Low), Signed(delta.High), Why(delta)];

    static string Why(NodeDelta delta) => delta.Lines.IsEmpty ? "" : (delta.Lines[0].Now.IsEmpty ? delta.Lines[0].Before : delta.Lines[0].Now) is [{ } reason, ..] ? reason.Text : delta.Lines[0].Title;

    static Section Changes(Generation generation)
    {
        var changes = RecordChanges.ByEntry(generation.Old, generation.New);
        var others = changes.Length - MostChanges;
        return new("What changed",
        [
            new Items([.. changes.Take(MostChanges).Select(change => new Item(Told(change)) { Label = Kind(change.Kind) })]),
            .. others > 0 ? [new Prose(string.Create(CultureInfo.InvariantCulture, $"And {others} more; fixscore diff tells all."), Tone.Quiet)] : (Block[])[],
        ])
        { IsFolded = true, Gist = string.Create(CultureInfo.InvariantCulture, $"{changes.Length} {(changes.Length == 1 ? "change" : "changes")}") };
    }

    static string Told(EntryChange change) => PlainText.Of(change.Entries.IsEmpty ? change.Text : $"{string.Join(", ", change.Entries)}: {change.Text}", 600);

    static string Kind(ChangeKind kind) => kind switch { ChangeKind.Added => "New", ChangeKind.Removed => "Gone", _ => "Changed" };

    static string Name(Records.TeardownRecord record) => PlainText.Of($"{record.Device.Maker} {record.Device.Model}", RecordTerms.LongestName);

    string Points(Interval value) => shown.Points(new Interval(decimal.Round(value.Low, 2), decimal.Round(value.High, 2)));

    // What is too small to show is no zero.
    string Signed(decimal value) => value != 0m && Math.Abs(value) < 0.005m
        ? string.Create(culture, $"{(value > 0m ? '+' : '\u2212')}{0.00m}")
        : decimal.Round(value, 2).ToString("+0.##;\u22120.##;0", culture);
}
