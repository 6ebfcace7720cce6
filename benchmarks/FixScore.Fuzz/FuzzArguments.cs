using System.Globalization;

namespace FixScore.Fuzz;

/// <summary>What the command line asks.</summary>
/// <param name="Targets">Names of what is to be tried.</param>
/// <param name="Inputs">How many inputs for each.</param>
/// <param name="Seed">What chance starts from.</param>
/// <param name="Keep">Folder for inputs that fail.</param>
sealed record FuzzArguments(string[] Targets, long Inputs, ulong Seed, string Keep)
{
    public const string Usage = "record|profile|score|settings|all --inputs N --seed S [--keep DIR]";

    static readonly string[] All = ["record", "profile", "score", "settings"];

    /// <summary>The arguments; <c>null</c> when they cannot be meant.</summary>
    public static FuzzArguments? Of(string[] args)
    {
        if (args is not [var target, .. var rest] || rest.Length % 2 != 0 || target != "all" && !All.Contains(target)) return null;
        var asked = new FuzzArguments(target == "all" ? All : [target], 100_000, 1, Path.Combine(Path.GetTempPath(), "fixscore-fuzz"));
        foreach (var pair in rest.Chunk(2))
        {
            if (Changed(asked, pair[0], pair[1]) is not { } changed) return null;
            asked = changed;
        }
        return asked;
    }

    static FuzzArguments? Changed(FuzzArguments asked, string name, string value) => name switch
    {
        "--inputs" when long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var inputs) => asked with { Inputs = inputs },
        "--seed" when ulong.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var seed) => asked with { Seed = seed },
        "--keep" => asked with { Keep = value },
        _ => null,
    };
}
