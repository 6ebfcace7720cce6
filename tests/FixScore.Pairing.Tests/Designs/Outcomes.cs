using FixScore.Pairing.Designs;

namespace FixScore.Pairing.Tests.Designs;

/// <summary>What the trials of a design show, by definition.</summary>
static class Outcomes
{
    public static string[] Parts(int count) => [.. Enumerable.Range(1, count).Select(i => $"p{i}")];

    /// <summary>For each trial whether a part is swapped, as <c>1</c> or <c>0</c>, the last trial first: a binary number.</summary>
    public static string Word(SwapDesign design, string part) =>
        string.Concat(design.Trials.Reverse().Select(trial => trial.Contains(part) ? '1' : '0'));

    /// <summary>For each trial whether exactly one of two parts is swapped.</summary>
    public static string Apart(SwapDesign design, string one, string other) =>
        string.Concat(Word(design, one).Zip(Word(design, other), (a, b) => a == b ? '0' : '1'));
}
