using System.Globalization;

namespace FixScore.Mutants;

/// <summary>What the command line asks.</summary>
/// <param name="Room">Whose mutants are tried.</param>
/// <param name="Out">Folder for all that is made and found; a run that ended early goes on from there.</param>
/// <param name="Slowest">Longest time of a test that takes part, in milliseconds.</param>
/// <param name="Without">Words in names of tests that are left out.</param>
sealed record MutantArguments(Room Room, string Out, double Slowest, string[] Without)
{
    public const string Usage = "kernel|disassembly|pairing [--out DIR] [--slowest MS] [--without WORD,WORD]";

    /// <summary>The arguments; <c>null</c> when they cannot be meant.</summary>
    public static MutantArguments? Of(string[] args)
    {
        if (args is not [var name, .. var rest] || rest.Length % 2 != 0 || Room.Named(name) is not { } room) return null;
        var asked = new MutantArguments(room, Path.Combine(Path.GetTempPath(), "fixscore-mutants", name), 1_000, []);
        foreach (var pair in rest.Chunk(2))
        {
            if (asked.Changed(pair[0], pair[1]) is not { } changed) return null;
            asked = changed;
        }
        return asked;
    }

    MutantArguments? Changed(string name, string value) => name switch
    {
        "--out" => this with { Out = Path.GetFullPath(value) },
        "--slowest" when double.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var slowest) => this with { Slowest = slowest },
        "--without" => this with { Without = value.Split(',') },
        _ => null,
    };
}
