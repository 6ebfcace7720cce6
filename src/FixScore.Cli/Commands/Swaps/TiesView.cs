using FixScore.Cli.Terminal;
using FixScore.Pairing.Ties;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Where a tie between two parts may be behind what is read as a tie to the main board, and how to tell.</summary>
sealed class TiesView(Canvas canvas)
{
    const int MostNamed = 4;

    public void Show(PairTies ties)
    {
        var findings = ties.Contexts.SelectMany(context => context.Findings).ToArray();
        canvas.Heading("Between two parts, and not to the main board");
        foreach (var finding in findings) canvas.Item(1, finding.Kind == TieFindingKind.OnlyPartsExplain ? "!" : "-", Text(finding));
        foreach (var tie in ties.Contexts.SelectMany(context => context.Between).Where(tie => tie.Verdict == FixScore.Pairing.Verdict.Paired))
            canvas.Item(1, "-", $"{tie.Tie} are tied to each other ({string.Join(", ", tie.Because)}).");
        canvas.Item(1, "", findings.Length == 0 ? "No trial asks for a tie between two parts." : "To tell: put in both parts of such a pair from one unit. If all works, the tie is between them; if not, it is to the main board.", quiet: true);
        canvas.Line();
    }

    static string Text(TieFinding finding) => finding.Kind == TieFindingKind.OnlyPartsExplain
        ? $"No tie to the main board explains {string.Join(", ", finding.Trials)}; a tie between two parts may: {Some(finding)}."
        : $"What ties {finding.Part} may as well be a part that stayed behind: {Some(finding)}.";

    static string Some(TieFinding finding) => string.Join(", ", finding.Between.Take(MostNamed).Select(tie => tie.With == finding.Part || finding.Part is null ? finding.Part is null ? tie.ToString() : tie.Part : tie.With ?? tie.Part))
        + (finding.Between.Length > MostNamed ? $", or one of {finding.Between.Length - MostNamed} more" : "");
}
