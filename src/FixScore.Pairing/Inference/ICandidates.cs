using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Inference;

/// <summary>What trials are asked about: candidates by key, each at stake in some trials and under suspicion of some checks.</summary>
interface ICandidates
{
    /// <summary>Keys of what a trial puts to the test, always in the same order; empty for a control.</summary>
    ImmutableArray<string> In(SwapTrial trial);

    /// <summary>Whether a candidate may be why a check is not as it should be.</summary>
    bool MayBlame(FunctionCheck check, string candidate);
}
