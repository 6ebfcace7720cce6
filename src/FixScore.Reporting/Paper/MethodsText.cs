using System.Collections.Immutable;
using System.Text;

namespace FixScore.Reporting.Paper;

/// <summary>What was done, in a paragraph to be quoted, and what it was done with.</summary>
static class MethodsText
{
    public static string Of(PaperInput input)
    {
        var text = new StringBuilder("# Methods\n\n").Append(Paragraph(input)).Append("\n\n");
        Sources(text, "Records", input.Records);
        Sources(text, "Profiles", input.Profiles);
        text.Append("## Make it again\n\nInside this folder:\n\n```\n").Append(input.Command).Append("\n```\n\n");
        text.Append("The folder `again` then holds the same bytes as this one, on any machine.\n\n## Tables\n\n");
        foreach (var table in Tables.ComparisonTables.Of(input.Comparison).AddRange(input.More))
        {
            text.Append("- `").Append(table.Name).Append("`: ").Append(table.Title).Append(".\n");
            foreach (var column in table.Columns) text.Append("  - `").Append(column.Name).Append("`: ").Append(column.Meaning).Append(".\n");
        }
        return text.ToString();
    }

    static string Paragraph(PaperInput input) => string.Join(' ',
    [
        $"{input.Comparison.Devices.Length} units were compared by {input.Comparison.Profiles.Length} {(input.Comparison.Profiles.Length == 1 ? "set" : "sets")} of rules ({string.Join(", ", input.Comparison.Profiles)}) with FixScore {input.Version}.",
        "Scores are exact decimals; what was not observed widens a score to an interval, and places follow from exact values: the best place counts the units above for certain, the worst those that can be above or level.",
        "Agreement is Kendall's tau-b and Spearman's coefficient on the middles of places; a reversal is two units whose order by middles of scores turns round, its cause the criterion whose contribution to the lead falls most.",
        "Dominance holds for any positive weights: no worse on any line, better on one.",
        .. input.Methods,
    ]);

    static void Sources(StringBuilder text, string title, ImmutableArray<PaperSource> sources)
    {
        if (sources.IsEmpty) return;
        text.Append("## ").Append(title).Append("\n\n");
        foreach (var source in sources) text.Append("- `").Append(source.Name).Append("`: ").Append(source.About).Append('\n');
        text.Append('\n');
    }
}
