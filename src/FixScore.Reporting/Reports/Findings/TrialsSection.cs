using System.Collections.Immutable;
using System.Globalization;
using FixScore.Pairing;
using FixScore.Pairing.Ties;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>Swap trials: what was put where, what software ties, and what stays open, context by context.</summary>
sealed class TrialsSection(CultureInfo culture)
{
    const string Title = "Swap trials";

    public Section Of(TeardownCase source)
    {
        var record = source.Record;
        return new(Title, record.Swaps.Count > 0 ? Told(source) : [new Prose(record.Swaps.IsRecorded ? "No swap was tried." : "Swap trials are not recorded.")])
        {
            Anchor = $"{record.Id}-swaps",
        };
    }

    ImmutableArray<Block> Told(TeardownCase source)
    {
        var terms = new RecordTerms(source.Record, culture);
        var contexts = source.Derive<PairingVerdicts>().Contexts;
        var comparison = source.Derive<ContextComparison>();
        var context = new ContextSection(source, terms, culture);
        return
        [
            new Prose($"{Count(source.Record.Swaps.Count, "swap trial", "swap trials")} in {Count(contexts.Length, "context", "contexts")}: lock state, software, and what was done after the swap. Trials of different contexts are never held against each other."),
            .. Units(source.Record),
            .. contexts.Any(TrialGrids.IsMatrixOf) ? [Items.Of(MatrixMarks.Legend, Tone.Quiet)] : (Block[])[],
            .. contexts.Select(context.Of),
            Ties(source),
            .. ComparedSections.Procedures(comparison, culture),
            .. ComparedSections.Sources(comparison),
        ];
    }

    static IEnumerable<Block> Units(TeardownRecord record)
    {
        var units = record.Assessment.Units;
        yield return new Items([.. units.Select(unit => new Item(string.Join(", ", Facts(unit))) { Label = unit.Id })]);
        if (units.Select(unit => unit.ModelCode).OfType<string>().Distinct(StringComparer.Ordinal).Count() > 1)
            yield return new Prose("Units of different model codes are not comparable: their trials count, with care.", Tone.Mind);
        var inert = record.Parts.Where(part => part.Inert).Select(part => part.Id).ToArray();
        if (inert.Length > 0) yield return new Prose($"Cannot carry a code, so never foreign: {string.Join(", ", inert)}.", Tone.Quiet);
    }

    static IEnumerable<string> Facts(AssessedUnit unit) =>
    [
        unit.Source.IsUnknown ? "source not recorded" : RecordTerms.Words(unit.Source),
        .. unit.ModelCode is { } code ? [$"model code {RecordTerms.Name(code)}"] : (string[])[],
        .. unit.Software is { } software ? [$"software {RecordTerms.Name(software)}"] : (string[])[],
    ];

    static Section Ties(TeardownCase source)
    {
        var contexts = source.Derive<PairTies>().Contexts;
        var text = new TieText(source.Derive<PartGroups>());
        ImmutableArray<Item> items =
        [
            .. from context in contexts
               from finding in context.Findings
               select new Item(text.Of(finding), finding.Kind == TieFindingKind.OnlyPartsExplain ? Tone.Mind : Tone.Plain) { Label = SwapWording.Context(context.Context) },
            .. from context in contexts
               from tie in context.Between
               where tie.Verdict == Verdict.Paired
               select new Item($"{tie.Tie} are tied to each other ({string.Join(", ", tie.Because)}).") { Label = SwapWording.Context(context.Context) },
        ];
        return new("Ties between two parts", items.IsEmpty ? [new Prose("No trial asks for a tie between two parts.")] : [new Items(items), new Prose(TieText.HowToTell, Tone.Quiet)]);
    }

    string Count(int count, string one, string many) => $"{count.ToString(culture)} {(count == 1 ? one : many)}";
}
