using System.Collections.Immutable;
using FixScore.Pairing.Inference;
using FixScore.Records;

namespace FixScore.Pairing.Posterior;

/// <summary>How well a statement of the trials goes with a set of ties.</summary>
/// <param name="Parts">Numbers of the parts it is about.</param>
/// <param name="Met">Likelihood when one of them is tied.</param>
/// <param name="Missed">Likelihood when none is.</param>
sealed record Factor(ImmutableArray<int> Parts, double Met, double Missed)
{
    /// <summary>One factor for each statement.</summary>
    public static ImmutableArray<Factor> Of(Statements said, ImmutableArray<SwapTrial> trials, ImmutableArray<string> parts, NoiseModel noise)
    {
        ImmutableArray<int> Numbers(ImmutableArray<string> ids) => [.. ids.Select(id => parts.IndexOf(id)).Order()];
        return
        [
            .. said.Flags.Select(flag => Flagged(Numbers(flag.Suspects), noise.Of(flag.Seen.Check.Function))),
            .. said.Clearances.Select(clearance => Clean(Numbers(clearance.Parts), trials[clearance.Trial].Checks.Where(CheckReading.Works).Select(check => noise.Of(check.Function)))),
        ];
    }

    static Factor Flagged(ImmutableArray<int> parts, ErrorRates rates) => new(parts, (double)(1 - rates.FalseClean), (double)rates.FalseFlag);

    static Factor Clean(ImmutableArray<int> parts, IEnumerable<ErrorRates> tested)
    {
        var rates = tested.ToArray();
        return new(parts, (double)rates.Max(each => each.FalseClean), (double)(1 - rates.Max(each => each.FalseFlag)));
    }
}
