using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>What changes when the same swap is tried under other circumstances, in sentences.</summary>
sealed class ComparisonView(Canvas canvas, CultureInfo culture)
{
    public void Show(ContextComparison comparison)
    {
        Section("Between lock states", comparison, ComparedBy.LockState, "No swap was tried in more than one lock state, all else equal.");
        Section("What procedures of the maker do", comparison, ComparedBy.Procedure, "No swap was tried both without and with a procedure, all else equal.");
        Section("Loose spares against parts of a sister unit", comparison, ComparedBy.Source, "No part was tried both from a sister unit and as a loose spare, all else equal.");
    }

    void Section(string title, ContextComparison comparison, ComparedBy by, string none)
    {
        canvas.Heading(title);
        var findings = comparison.Functions.Where(each => each.By == by).Select(each => each.Finding)
            .Concat(by == ComparedBy.Procedure ? comparison.Parts.Select(each => each.Finding) : []).ToArray();
        if (findings.Length == 0) canvas.Item(1, "", none, quiet: true);
        foreach (var finding in findings) canvas.Item(1, "-", $"{finding.Why.ToString(culture)} ({string.Join(", ", finding.Trials)})");
        canvas.Line();
    }
}
