using System.Collections.Immutable;

namespace FixScore.Analysis.Assessors;

/// <summary>A member of a record that assessors fill in differently.</summary>
/// <param name="Path">Where, with entries of lists named by their id or else by what they are about: <c>/parts/cell/role</c>.</param>
/// <param name="At">For each record the JSON Pointer to it, where entries have the numbers of that record; <c>null</c> where it is not recorded.</param>
/// <param name="Values">For each record its canonical JSON text (RFC 8785); <c>null</c> where it is not recorded.</param>
public sealed record Disagreement(Pointer Path, ImmutableArray<Pointer?> At, ImmutableArray<string?> Values)
{
    /// <summary>Whether those who recorded it agree: the others only left it unknown.</summary>
    public bool IsSilence => Values.OfType<string>().Distinct(StringComparer.Ordinal).Count() == 1;
}
