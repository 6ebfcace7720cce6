using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;

namespace FixScore.Reporting;

/// <summary>Short marks for the trials of a context, so that tables can name them: letters, or numbers where there are more. Immutable and thread safe.</summary>
/// <param name="trials">The trials, in the order of their marks; ids are unique.</param>
public sealed class TrialMarks(ImmutableArray<SwapTrial> trials)
{
    const int Letters = 26;

    readonly Dictionary<string, int> places = trials.Index().ToDictionary(each => each.Item.Id, each => each.Index, StringComparer.Ordinal);

    /// <summary>The mark of a trial.</summary>
    /// <param name="trial">Id of one of the trials.</param>
    /// <exception cref="KeyNotFoundException">It is none of them.</exception>
    public string Of(string trial) =>
        trials.Length > Letters ? (places[trial] + 1).ToString(CultureInfo.InvariantCulture) : $"{(char)('a' + places[trial])}";

    /// <summary>A trial in a line: what was put where, and what was flagged. May hold text of the record, which nobody has checked.</summary>
    public static string Told(SwapTrial trial) => $"{trial.Id}: {Installed(trial)}; {Flagged(trial)}";

    /// <summary>What was put where.</summary>
    public static string Installed(SwapTrial trial) => trial.Installed.IsEmpty
        ? $"control on {trial.Host}"
        : $"{string.Join(", ", trial.Installed.GroupBy(part => part.Unit, StringComparer.Ordinal)
            .Select(from => $"{string.Join(", ", from.Select(part => part.Part))} of {from.Key}"))} in {trial.Host}";

    /// <summary>What did not work for certain; what was not tested is told as well.</summary>
    public static string Flagged(SwapTrial trial)
    {
        string[] others = [.. trial.Checks.Where(check => !check.Result.Is(SwapResult.Works)).Select(check => $"{check.Function} {Results(check)}")];
        return trial.Checks.IsEmpty ? "nothing checked" : others.Length == 0 ? "all works" : string.Join(", ", others);
    }

    static string Results(FunctionCheck check) => RecordTerms.Words(check.Result);
}
