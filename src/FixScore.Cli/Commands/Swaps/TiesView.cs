using FixScore.Cli.Terminal;
using FixScore.Pairing.Ties;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Where a tie between two parts may be behind what is read as a tie to the main board, and how to tell.</summary>
sealed class TiesView(Canvas canvas)
{
    public void Show(PairTies ties, PartGroups groups)
    {
        var text = new TieText(groups);
        var findings = ties.Contexts.SelectMany(context => context.Findings).ToArray();
        canvas.Heading("Between two parts, and not to the main board");
        foreach (var finding in findings) canvas.Item(1, finding.Kind == TieFindingKind.OnlyPartsExplain ? "!" : "-", text.Of(finding));
        foreach (var tie in ties.Contexts.SelectMany(context => context.Between).Where(tie => tie.Verdict == FixScore.Pairing.Verdict.Paired))
            canvas.Item(1, "-", $"{tie.Tie} are tied to each other ({string.Join(", ", tie.Because)}).");
        canvas.Item(1, "", findings.Length == 0 ? "No trial asks for a tie between two parts." : TieText.HowToTell, quiet: true);
        canvas.Line();
    }
}
