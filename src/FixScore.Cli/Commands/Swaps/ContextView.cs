using System.Collections.Immutable;
using FixScore.Cli.Commands.Routing;
using FixScore.Cli.Terminal;
using FixScore.Pairing;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Swaps;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>What the trials of one context prove: the trials, a table of parts, what stays open, what cannot be right.</summary>
sealed class ContextView(Canvas canvas, ContextVerdicts context, ImmutableArray<SettlingTrial> settling)
{
    static readonly Verdict[] Order = [Verdict.Paired, Verdict.Suspect, Verdict.Cleared];

    readonly TrialMarks marks = new(context.Trials);

    public void Show()
    {
        canvas.Heading(Capital(context.Context.ToString()));
        foreach (var trial in context.Trials) canvas.Item(1, marks.Of(trial.Id), TrialMarks.Told(trial));
        if (context.IsConsistent) Verdicts();
        else Contradictions();
        var untried = context.Parts.Where(each => each is { Verdict: Verdict.Untested, Part.Inert: false }).Select(each => each.Part.Id).ToArray();
        if (untried.Length > 0) canvas.Item(0, "", $"Not tried here: {string.Join(", ", untried)}.", quiet: true);
        Settle();
        canvas.Line();
    }

    // Suspects first: what was never tried is for a plan.
    void Settle()
    {
        var suspects = settling.Where(trial => trial.Now == Verdict.Suspect).ToArray();
        if (suspects.Length > 0) canvas.Line("What settles them, whatever comes of it:");
        foreach (var trial in suspects) canvas.Item(1, "-", SettlingText.Of(trial));
    }

    void Contradictions()
    {
        canvas.Line();
        foreach (var trials in context.Contradictions)
            canvas.Item(0, "!", ContradictionText.Of(trials));
        if (!context.AllContradictionsListed) canvas.Item(0, "!", ContradictionText.MayBeMore);
        canvas.Line(ContradictionText.Advice);
    }

    void Verdicts()
    {
        PartVerdict[] tried = [.. Order.SelectMany(verdict => context.Parts.Where(each => each.Verdict == verdict))];
        if (tried.Length == 0)
        {
            canvas.Line("Only controls: no part was foreign.");
            return;
        }
        canvas.Table([("Part", false), ("Verdict", false), ("Worst", false), ("Because", false)], tried.Select(Row), Names.FoldedAt);
        foreach (var alike in tried.Where(each => each.Verdict == Verdict.Suspect).GroupBy(SuspectText.Of))
            canvas.Item(0, "?", $"{string.Join(", ", alike.Select(each => each.Part.Id))}: {alike.Key}");
    }

    string[] Row(PartVerdict verdict) =>
        [verdict.Part.Id, Word.Of(verdict.Verdict), Worst(verdict), string.Join(" ", verdict.Because.Select(marks.Of).DefaultIfEmpty(RouteText.Nothing))];

    static string Worst(PartVerdict verdict) => verdict.Verdict switch
    {
        Verdict.Paired => string.Join(" or ", verdict.Worst.Stated.Select(Word.Of)),
        Verdict.Suspect => $"up to {Word.Of(verdict.OfPart.AtWorst)}",
        _ => RouteText.Nothing,
    };

    static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
