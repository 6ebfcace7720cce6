using System.Globalization;
using System.Text;
using FixScore.Mutants.Trying;

namespace FixScore.Mutants;

/// <summary>The result as text: a table of folders, then the mutants that no test noticed.</summary>
static class Summary
{
    public static string Of(Mutant[] mutants, IReadOnlyDictionary<int, Verdict> verdicts)
    {
        var text = new StringBuilder();
        foreach (var group in mutants.GroupBy(mutant => Path.GetDirectoryName(mutant.File)!).OrderBy(group => group.Key, StringComparer.Ordinal)) Row(group.Key, [.. group]);
        Row("all", mutants);
        foreach (var mutant in mutants.Where(IsLeft).OrderBy(mutant => mutant.File, StringComparer.Ordinal).ThenBy(mutant => mutant.Line))
            text.Append(CultureInfo.InvariantCulture, $"{verdicts[mutant.Id]} {mutant.Id} {mutant.File}:{mutant.Line} {mutant.Kind}: {mutant.Text.ReplaceLineEndings(" ")}\n");
        return text.ToString();

        bool IsLeft(Mutant mutant) => verdicts[mutant.Id].IsLeft();

        void Row(string name, Mutant[] of)
        {
            var noticed = of.Count(mutant => !IsLeft(mutant));
            text.Append(CultureInfo.InvariantCulture, $"{noticed,5} of {of.Length,5}  {100m * noticed / of.Length,5:0.0} %  {name}\n");
        }
    }
}
