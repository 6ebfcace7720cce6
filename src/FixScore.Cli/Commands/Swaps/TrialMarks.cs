using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Commands.Routing;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Short marks for the trials of a context, so that tables can name them: letters, or numbers where there are more.</summary>
sealed class TrialMarks(ImmutableArray<SwapTrial> trials)
{
    const int Letters = 26;

    readonly Dictionary<string, int> places = trials.Index().ToDictionary(each => each.Item.Id, each => each.Index, StringComparer.Ordinal);

    public string Of(string trial) =>
        trials.Length > Letters ? (places[trial] + 1).ToString(CultureInfo.InvariantCulture) : $"{(char)('a' + places[trial])}";

    /// <summary>A trial in a line: what was put where, and what was flagged.</summary>
    public static string Told(SwapTrial trial) => $"{trial.Id}: {Installed(trial)}; {Flagged(trial)}";

    static string Installed(SwapTrial trial) => trial.Installed.IsEmpty
        ? $"control on {trial.Host}"
        : $"{string.Join(", ", trial.Installed.GroupBy(part => part.Unit, StringComparer.Ordinal)
            .Select(from => $"{string.Join(", ", from.Select(part => part.Part))} of {from.Key}"))} in {trial.Host}";

    static string Flagged(SwapTrial trial)
    {
        string[] others = [.. trial.Checks.Where(check => !check.Result.Is(SwapResult.Works)).Select(check => $"{check.Function} {Results(check)}")];
        return trial.Checks.IsEmpty ? "nothing checked" : others.Length == 0 ? "all works" : string.Join(", ", others);
    }

    static string Results(FunctionCheck check) => string.Join(" or ", check.Result.Stated.Select(Names.Plainly));
}
