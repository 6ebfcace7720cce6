using FixScore.Pairing;

namespace FixScore.Reporting;

using Verdict = FixScore.Pairing.Verdict;

/// <summary>Why a part stays a suspect.</summary>
public static class SuspectText
{
    /// <summary>The reason in words, to follow the part's name and a colon. Thread safe.</summary>
    /// <param name="suspect">A verdict on a part that is a suspect.</param>
    public static string Of(PartVerdict suspect)
    {
        if (!ReferenceEquals(suspect.OfPart, suspect.OfGroup)) return OfGroup(suspect.OfGroup.Verdict);
        var functions = suspect.OfPart.Flags.Select(flag => flag.Check.Function).Distinct(StringComparer.Ordinal).ToArray();
        return functions.Length == 0
            ? "neither blamed nor cleared, as what may show it was not tested or is a fault of the host."
            : $"may be what is wrong with {string.Join(", ", functions)}.";
    }

    static string OfGroup(Verdict verdict) => verdict == Verdict.Paired
        ? "comes only together with others, and together they are tied: no trial can tell which of them it is, and none is needed."
        : "comes only together with others.";
}
