using System.Collections.Immutable;
using FixScore.Analysis.Agreement;

namespace FixScore.Analysis.Comparing;

/// <summary>Two profiles side by side.</summary>
/// <remarks>Immutable and thread safe.</remarks>
/// <param name="A">Number of the one.</param>
/// <param name="B">Number of the other.</param>
/// <param name="Agreement">Agreement of the middles of ranks; its tau-b and Spearman coefficients are those of choice.</param>
/// <param name="Shift">How far devices move between both.</param>
/// <param name="Reversals">Devices whose order turns round: the first is above under A.</param>
/// <param name="HasExactCauses">Whether both profiles add up linearly; else causes rest on share x value, which is only near the truth.</param>
public sealed record ProfilePair(int A, int B, RankAgreement Agreement, RankShift Shift, ImmutableArray<Reversal> Reversals, bool HasExactCauses);
