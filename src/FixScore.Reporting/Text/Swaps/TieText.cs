using System.Globalization;
using FixScore.Pairing.Ties;

namespace FixScore.Reporting;

/// <summary>Where a tie between two parts may be behind what is read as a tie to the main board, in a sentence. Thread safe.</summary>
/// <param name="groups">The groups of the record.</param>
public sealed class TieText(PartGroups groups)
{
    const int MostNamed = 4;

    /// <summary>How to tell both readings apart.</summary>
    public const string HowToTell = "To tell: put in both parts of such a pair from one unit. If all works, the tie is between them; if not, it is to the main board.";

    /// <summary>The sentence.</summary>
    public string Of(TieFinding finding) => finding.Kind == TieFindingKind.OnlyPartsExplain
        ? $"No tie to the main board explains {string.Join(", ", finding.Trials)}; a tie between two parts may: {Some([.. finding.Between.Select(tie => tie.ToString())])}."
        : $"What ties {finding.Part} may as well be a part that stayed behind: {Some([.. finding.Between.Select(tie => Other(tie, finding.Part!)).Distinct(StringComparer.Ordinal)])}.";

    // Any member of the part's group may be an end of the tie; the other end is what stayed behind.
    string Other(Tie tie, string part) => groups.Of(part).Holds(tie.Part) ? tie.With! : tie.Part;

    static string Some(string[] names) => names.Length <= MostNamed + 1
        ? string.Join(", ", names)
        : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", names.Take(MostNamed))}, or one of {names.Length - MostNamed} more");
}
