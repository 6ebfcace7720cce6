using System.Collections.Immutable;
using FixScore.Pairing;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>The trials of one context as a matrix of parts and trials or, where there are many, as a list.</summary>
sealed class TrialGrids(RecordTerms terms, MatrixMarks origins, ContextVerdicts context)
{
    /// <summary>With more trials a matrix is wider than a page.</summary>
    public const int MostColumns = 12;

    readonly TrialMarks marks = new(context.Trials);
    readonly ImmutableArray<PartVerdict> tried = [.. context.Parts.Where(each => each.Verdict != Verdict.Untested)];

    public string MarkOf(SwapTrial trial) => marks.Of(trial.Id);

    public bool IsMatrix => IsMatrixOf(context);

    public static bool IsMatrixOf(ContextVerdicts context) => context.Trials.Length <= MostColumns;

    /// <summary>Parts in rows, trials in columns; the verdicts only where the trials do not contradict each other.</summary>
    public Grid Matrix => new("Where each part came from, trial by trial, and what follows",
        ["Part", .. context.Trials.Select(trial => new GridColumn(marks.Of(trial.Id), GridKind.Mark)), .. context.IsConsistent ? VerdictColumns : []],
        tried.IsEmpty ? [] : [.. tried.Select(Row), Outcomes]);

    /// <summary>One trial a row.</summary>
    public Grid List => new("Trials",
        [new("", GridKind.Mark), "Trial", "Put where", "What was flagged"],
        [.. context.Trials.Select(Row)]);

    /// <summary>The verdicts alone, for contexts whose trials are listed.</summary>
    public Grid Verdicts => new("What follows", ["Part", .. VerdictColumns],
        context.IsConsistent ? [.. tried.Select(verdict => (ImmutableArray<GridCell>)[terms.Part(verdict.Part.Id), .. VerdictCells(verdict)])] : []);

    static GridColumn[] VerdictColumns => ["Verdict", "Worst effect", "Proof"];

    ImmutableArray<GridCell> Row(PartVerdict verdict) =>
        [terms.Part(verdict.Part.Id), .. context.Trials.Select(trial => (GridCell)origins.Origin(verdict.Part.Id, trial)), .. context.IsConsistent ? VerdictCells(verdict) : []];

    ImmutableArray<GridCell> Outcomes =>
        ["what came of it", .. context.Trials.Select(trial => (GridCell)MatrixMarks.Outcome(trial)), .. context.IsConsistent ? VerdictColumns.Select(_ => (GridCell)"") : []];

    GridCell[] VerdictCells(PartVerdict verdict)
    {
        var conclusion = SwapWording.Shown(verdict);
        return [SwapWording.Verdict(verdict), SwapWording.Worst(conclusion), conclusion.Because.IsEmpty ? "-" : string.Join(" ", conclusion.Because.Select(marks.Of))];
    }

    ImmutableArray<GridCell> Row(SwapTrial trial) =>
        [marks.Of(trial.Id), trial.Id, PlainText.Of(TrialMarks.Installed(trial)), PlainText.Of(TrialMarks.Flagged(trial))];
}
