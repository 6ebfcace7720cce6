using FixScore.Pairing;

namespace FixScore.Reporting;

/// <summary>A trial that settles a part, as something to do at the bench.</summary>
public static class SettlingText
{
    /// <summary>What to put where, what to check, and what each outcome means. Thread safe.</summary>
    public static string Of(SettlingTrial trial) => string.Concat(
        trial.NeedsControl ? $"Check {trial.Host} with its own parts first. " : "",
        $"Put {string.Join(" and ", trial.Parts)} of {trial.Donor} into {trial.Host}, nothing else from another unit, and check ",
        trial.Flagged.IsEmpty ? "every function" : $"{string.Join(", ", trial.Flagged)} first, then every other function",
        ". All works: free. Anything worse: tied",
        trial.Parts.Length > 1 ? "; no trial can tell which of them." : ".");
}
