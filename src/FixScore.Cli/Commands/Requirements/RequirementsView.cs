using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Records;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Requirements;

/// <summary>Findings as text, set after set. Rules of a set that are answered alike are told together.</summary>
sealed class RequirementsView(Canvas canvas, CultureInfo culture)
{
    public void Show(ImmutableArray<CheckedRecord> records)
    {
        foreach (var record in records) Show(record);
        canvas.Line("A screening aid, not legal advice: it says what the record shows, and leaves the judgement to those who may give it.");
    }

    void Show(CheckedRecord result)
    {
        var record = result.Record;
        canvas.Heading($"{record.Device.Maker} {record.Device.Model} ({record.Id})");
        canvas.Line($"asked for {DateOption.Text(result.Date)}{(result.Date == record.Assessment.Date ? ", the day of the assessment" : "")}");
        canvas.Line();
        foreach (var set in result.Sets) Show(record, set);
    }

    void Show(TeardownRecord record, CheckedSet set)
    {
        canvas.Heading($"{set.Info.Id}: {set.Info.Title}");
        canvas.Item(1, "", $"Source: {set.Info.Source}.", quiet: true);
        foreach (var alike in set.Findings.GroupBy(finding => (finding.Status, finding.Article, Why: Why(record, finding))))
        {
            canvas.Item(1, "-", $"{Word.Of(alike.Key.Status)}: {string.Join(", ", alike.Select(finding => finding.Rule))} ({alike.Key.Article})");
            canvas.Item(3, "", alike.Key.Why);
        }
        canvas.Item(1, "!", set.Info.Caution);
        canvas.Line();
    }

    string Why(TeardownRecord record, Finding finding) =>
        finding.Why.ToString(culture) + (finding.Why.Pointers.IsEmpty ? "" : $" ({EvidenceText.Of(record, finding.Why.Pointers)})");
}
