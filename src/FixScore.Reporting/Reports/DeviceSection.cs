using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>All that is said of one device: what it scores and why, how it opens, what software ties, what can be had for it, what the law asks.</summary>
sealed class DeviceSection(CultureInfo culture, CancellationToken cancellation)
{
    readonly JudgementSection judged = new(culture);

    public Section Of(ImmutableArray<Judgement> judgements, ImmutableArray<CheckedRequirements> requirements)
    {
        var record = judgements[0].Record;
        var source = new RecordCase(record, cancellation);
        return new(PlainText.Of(judgements[0].Device, RecordTerms.LongestName),
        [
            new Prose(Bench(record), Tone.Quiet),
            .. judged.Of(judgements[0]),
            .. judgements.Skip(1).Select(judged.Other),
            .. Opening(source),
            .. Findings(source, requirements),
        ])
        { Anchor = record.Id };
    }

    static string Bench(TeardownRecord record)
    {
        var assessment = record.Assessment;
        return $"Record {record.Id}, by {PlainText.Of(assessment.Assessor, RecordTerms.LongestName)}, {assessment.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}; units {string.Join(", ", assessment.Units.Select(unit => unit.Id))}.";
    }

    IEnumerable<Block> Opening(TeardownCase source) => [];

    IEnumerable<Block> Findings(TeardownCase source, ImmutableArray<CheckedRequirements> requirements) => [];
}
