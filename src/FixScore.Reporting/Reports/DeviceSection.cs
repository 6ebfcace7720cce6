using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Pictures;

namespace FixScore.Reporting.Reports;

/// <summary>All that is said of one device: what it scores and why, how it opens, what software ties, what can be had for it, what the law asks.</summary>
sealed class DeviceSection(CultureInfo culture, CancellationToken cancellation)
{
    readonly JudgementSection judged = new(culture);

    public Section Of(ImmutableArray<Judgement> judgements, ImmutableArray<CheckedRequirements> requirements)
    {
        var record = judgements[0].Record;
        var source = new RecordCase(record, cancellation);
        var gists = new Gists(source, culture);
        return new(PlainText.Of(judgements[0].Device, RecordTerms.LongestName),
        [
            new Prose(Bench(record), Tone.Quiet),
            .. judged.Of(judgements[0]),
            .. judgements.Skip(1).Select(judged.Other),
            .. Opening(source, gists),
            .. Findings(source, gists, requirements),
        ])
        { Anchor = record.Id };
    }

    static string Bench(TeardownRecord record)
    {
        var assessment = record.Assessment;
        return $"Record {record.Id}, by {PlainText.Of(assessment.Assessor, RecordTerms.LongestName)}, {assessment.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}; units {string.Join(", ", assessment.Units.Select(unit => unit.Id))}.";
    }

    IEnumerable<Section> Opening(TeardownCase source, Gists gists) =>
    [
        Folded(new RoutesSection(culture).Of(source, Drawn(source)), gists.Routes()),
        Folded(new ScrewsSection(culture).Of(source), gists.Screws()),
        Folded(new AdhesivesSection(culture).Of(source), ""),
        Folded(new ReassemblySection(culture).Of(source), ""),
    ];

    IEnumerable<Section> Findings(TeardownCase source, Gists gists, ImmutableArray<CheckedRequirements> requirements) =>
    [
        Folded(new TrialsSection(culture).Of(source), gists.Trials()),
        Folded(new LocksSection(culture).Of(source), gists.Locks()),
        Folded(new DocumentsSection(culture).Of(source), gists.Documents()),
        Folded(new SparesSection(culture).Of(source), gists.Spares()),
        .. requirements.IsEmpty ? [] : (Section[])[Folded(new RequirementsSection(culture).Of(source.Record, requirements[0].Date, [.. requirements.Select(each => (each.Set, each.Findings))]), gists.Requirements(requirements.SelectMany(each => each.Findings)))],
    ];

    Picture? Drawn(TeardownCase source) => source.Record.Operations.Count == 0 ? null
        : new(RoutePicture.Of(source, new RouteQuery([]), culture), "The device in layers, and the routes to its priority parts", "") { IsWide = true, IsToldBeside = true };

    static Section Folded(Section section, string gist) => Unnamed(section) with { IsFolded = true, Gist = gist };

    // Several devices share a page, and the contents list devices only.
    static Section Unnamed(Section section) => section with { Anchor = "", Blocks = [.. section.Blocks.Select(block => block is Section inner ? Unnamed(inner) : block)] };
}
