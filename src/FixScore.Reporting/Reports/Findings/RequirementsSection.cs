using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Findings against named legal requirements, set after set. Rules of a set that are answered alike are told together.</summary>
sealed class RequirementsSection(CultureInfo culture)
{
    const string Title = "Legal requirements";
    const string Form = "yyyy-MM-dd";

    static readonly ImmutableArray<(FindingStatus Status, string Words)> Statuses =
        [(FindingStatus.Met, "met"), (FindingStatus.NotMet, "not met"), (FindingStatus.Unknown, "unknown"), (FindingStatus.NotApplicable, "does not apply")];

    // What asks for a reader comes first; within a status the order is that of the law.
    static readonly ImmutableArray<FindingStatus> Urgency = [FindingStatus.NotMet, FindingStatus.Unknown, FindingStatus.Met, FindingStatus.NotApplicable];

    /// <summary>The findings; dates are written as ISO 8601 has them in every culture.</summary>
    public Section Of(TeardownRecord record, DateOnly date, IReadOnlyList<(RequirementInfo Info, ImmutableArray<Finding> Findings)> sets) =>
        new(Title, sets.Count == 0 ? [new Prose("No legal requirements were asked about.")] : Told(record, date, sets)) { Anchor = $"{record.Id}-law" };

    ImmutableArray<Block> Told(TeardownRecord record, DateOnly date, IReadOnlyList<(RequirementInfo Info, ImmutableArray<Finding> Findings)> sets) =>
    [
        new Prose(Summary(record, date, [.. sets.SelectMany(set => set.Findings)]), Tone.Lead),
        new Prose("A screening aid, not legal advice: it says what the record shows, and leaves the judgement to those who may give it.", Tone.Mind),
        new Grid("Requirements by status",
            ["Law", .. Statuses.Select(status => new GridColumn(Capital(status.Words), GridKind.Number))],
            [.. sets.Select(set => (ImmutableArray<GridCell>)[PlainText.Of(set.Info.Title), .. Statuses.Select(status => Counted(set.Findings, status.Status))])]),
        .. sets.Select(set => Set(record, set.Info, set.Findings)),
    ];

    string Summary(TeardownRecord record, DateOnly date, ImmutableArray<Finding> findings)
    {
        var counts = string.Join(", ", Statuses.Select(status => $"{Text(Count(findings, status.Status))} {Words(status.Status, Count(findings, status.Status))}"));
        var day = $"{date.ToString(Form, CultureInfo.InvariantCulture)}{(date == record.Assessment.Date ? ", the day of the assessment" : "")}";
        return $"Asked for {day}. {Text(findings.Length)} {(findings.Length == 1 ? "requirement" : "requirements")}: {counts}.";
    }

    Section Set(TeardownRecord record, RequirementInfo info, ImmutableArray<Finding> findings) => new(PlainText.Of(info.Title),
    [
        new Prose($"{info.Id}. Source: {info.Source}.", Tone.Quiet),
        new Prose(info.Caution, Tone.Mind),
        new Grid($"Findings of {info.Id}, what is not met first", ["Rule", "Article", "Status", "Why", new("Where it stands in the record") { IsExtra = true }],
            [.. findings.OrderBy(finding => Urgency.IndexOf(finding.Status)).GroupBy(finding => (finding.Status, finding.Article, Why: Why(finding), At: At(record, finding))).Select(alike => (ImmutableArray<GridCell>)
                [string.Join(", ", alike.Select(finding => finding.Rule)), alike.Key.Article, Words(alike.Key.Status, 1), alike.Key.Why, alike.Key.At])]),
    ])
    { Anchor = $"{record.Id}-{info.Id}", IsFolded = true };

    string Why(Finding finding) => PlainText.Of(finding.Why.ToString(culture));

    static string At(TeardownRecord record, Finding finding) => finding.Why.Pointers.IsEmpty ? "" : PlainText.Of(EvidenceText.Of(record, finding.Why.Pointers));

    static string Words(FindingStatus status, int count) => status == FindingStatus.NotApplicable && count != 1 ? "do not apply" : Statuses.First(each => each.Status == status).Words;

    static int Count(ImmutableArray<Finding> findings, FindingStatus status) => findings.Count(finding => finding.Status == status);

    GridCell Counted(ImmutableArray<Finding> findings, FindingStatus status) => Text(Count(findings, status));

    string Text(int number) => number.ToString(culture);

    static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
