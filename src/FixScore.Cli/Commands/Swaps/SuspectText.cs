using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>Why a part stays a suspect, and what to do about it at the bench.</summary>
static class SuspectText
{
    public static string Of(PartVerdict suspect)
    {
        if (!ReferenceEquals(suspect.OfPart, suspect.OfGroup)) return OfGroup(suspect.OfGroup.Verdict);
        var functions = suspect.OfPart.Flags.Select(flag => flag.Check.Function).Distinct(StringComparer.Ordinal).ToArray();
        return functions.Length == 0
            ? "neither blamed nor cleared, as what may show it was not tested or is a fault of the host. Try each alone from another unit and check every function."
            : $"may be what is wrong with {string.Join(", ", functions)}. Try each alone from another unit and check that.";
    }

    static string OfGroup(Verdict verdict) => verdict == Verdict.Paired
        ? "comes only together with others, and together they are tied: no trial can tell which of them it is, and none is needed."
        : "comes only together with others. Try them together, with nothing else from another unit, and check every function.";
}
