using System.Collections.Immutable;
using System.Globalization;
using FixScore.Pairing;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>What the swap trials of one context prove, leave open, or cannot all be right about.</summary>
sealed class ContextSection(TeardownCase source, RecordTerms terms, CultureInfo culture)
{
    readonly MatrixMarks origins = new(source.Record, source.Derive<ForeignInTrials>());
    readonly SettlingTrials settling = source.Derive<SettlingTrials>();

    public Section Of(ContextVerdicts context)
    {
        var grids = new TrialGrids(terms, origins, context);
        return new(SwapWording.Context(context.Context),
        [
            .. context.IsConsistent ? [Summary(context)] : Contradictions(context),
            .. grids.IsMatrix ? Matrix(grids, context) : Listed(grids, context),
            .. context.IsConsistent ? [Suspects(context)] : (Block[])[],
            .. Settling(context),
            .. Untried(context),
        ]);
    }

    Prose Summary(ContextVerdicts context)
    {
        PartVerdict[] tied = [.. context.Parts.Where(each => each.OfGroup.Verdict == Verdict.Paired)];
        PartVerdict[] open = [.. context.Parts.Where(each => each is { Verdict: Verdict.Suspect, OfGroup.Verdict: not Verdict.Paired })];
        var free = context.Parts.Count(each => each is { Verdict: Verdict.Cleared, OfGroup.Verdict: not Verdict.Paired });
        string[] told =
        [
            tied.Length == 0 ? "No part is proven tied to the main board." : $"Proven tied to the main board: {Ids(tied)}.",
            .. open.Length == 0 ? (string[])[] : [$"Open: {Ids(open)}."],
            free == 0 ? "None is proven free." : $"Proven free: {Count(free, "part", "parts")}.",
        ];
        return context.Parts.All(each => each.Verdict == Verdict.Untested) ? new("Only controls: no part was foreign.") : new(string.Join(" ", told), Tone.Lead);
    }

    static IEnumerable<Block> Contradictions(ContextVerdicts context) =>
    [
        .. context.Contradictions.Select(ContradictionText.Of).Concat(context.AllContradictionsListed ? [] : [ContradictionText.MayBeMore]).Select(text => new Prose(text, Tone.Mind)),
        new Prose(ContradictionText.Advice),
    ];

    IEnumerable<Block> Matrix(TrialGrids grids, ContextVerdicts context) =>
    [
        grids.Matrix,
        new Items([.. context.Trials.Select(trial => new Item(Told(trial)) { Label = grids.MarkOf(trial) })]),
    ];

    IEnumerable<Block> Listed(TrialGrids grids, ContextVerdicts context) =>
    [
        new Prose($"With {Count(context.Trials.Length, "trial", "trials")} a matrix would be wider than a page; the trials are listed, one a row.", Tone.Quiet),
        grids.List,
        grids.Verdicts,
    ];

    string Told(Records.SwapTrial trial) =>
        RemarkText.Of(source.Record, trial) is { Length: > 0 } remark ? $"{PlainText.Of(TrialMarks.Told(trial))}. {remark}" : PlainText.Of(TrialMarks.Told(trial));

    static Items Suspects(ContextVerdicts context) => new(
    [
        .. context.Parts.Where(each => each.Verdict == Verdict.Suspect).GroupBy(SuspectText.Of)
            .Select(alike => new Item($"{Ids(alike)}: {PlainText.Of(alike.Key)}", SwapWording.IsTiedAsGroup(alike.First()) ? Tone.Plain : Tone.Open)),
    ]);

    IEnumerable<Block> Settling(ContextVerdicts context)
    {
        ImmutableArray<SettlingTrial> trials = [.. settling.Trials.Where(trial => trial.Context == context.Context && trial.Now == Verdict.Suspect)];
        if (trials.IsEmpty) return [];
        return [new Prose("What settles the open parts, whatever comes of it:"), Items.Of(trials.Select(trial => PlainText.Of(SettlingText.Of(trial))))];
    }

    static IEnumerable<Block> Untried(ContextVerdicts context)
    {
        PartVerdict[] untried = [.. context.Parts.Where(each => each is { Verdict: Verdict.Untested, Part.Inert: false })];
        if (untried.Length > 0) yield return new Prose($"Not tried here: {Ids(untried)}.", Tone.Quiet);
    }

    static string Ids(IEnumerable<PartVerdict> parts) => string.Join(", ", parts.Select(each => each.Part.Id));

    string Count(int count, string one, string many) => $"{count.ToString(culture)} {(count == 1 ? one : many)}";
}
