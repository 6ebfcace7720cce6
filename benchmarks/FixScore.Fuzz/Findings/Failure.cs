using System.Diagnostics;
using System.Text.RegularExpressions;

namespace FixScore.Fuzz.Findings;

/// <summary>How an input failed.</summary>
/// <param name="Key">The same for inputs that fail in the same way.</param>
/// <param name="Reason">What happened, for people.</param>
sealed partial record Failure(string Key, string Reason)
{
    const int Frames = 6;

    public static Failure Of(Exception thrown) => thrown is FaultException
        ? new(Digits().Replace(thrown.Message, "0"), thrown.Message)
        : new($"{thrown.GetType().Name} {Own(thrown).FirstOrDefault()}", $"{thrown.GetType().Name}: {thrown.Message}\n  {string.Join("\n  ", Own(thrown))}");

    /// <summary>The key of what takes too long: making that small takes longer still.</summary>
    public const string TooSlow = "slow";

    public static Failure Slow(long milliseconds) => new(TooSlow, $"It took {milliseconds} ms.");

    // Where in this product it came from: the runtime's own frames say little.
    static IEnumerable<string> Own(Exception thrown) => new StackTrace(thrown).GetFrames().Select(frame => frame.GetMethod())
        .Where(method => method?.DeclaringType?.FullName?.StartsWith("FixScore", StringComparison.Ordinal) == true)
        .Select(method => $"{method!.DeclaringType!.FullName}.{method.Name}").Take(Frames);

    [GeneratedRegex("[0-9]+|'[^']*'")]
    private static partial Regex Digits();
}
