using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing;

/// <summary>What is swapped as one: a part, or a group that is replaced together.</summary>
/// <param name="Part">The first of its parts that can carry a code; naming it in a trial names the group.</param>
/// <param name="Parts">All of them that can, in the order of the record.</param>
/// <param name="Probability">How probable it is, before any trial, that one of them is tied; a guess.</param>
public sealed record SwapUnit(Part Part, ImmutableArray<Part> Parts, decimal Probability)
{
    /// <summary>The id of <see cref="Part"/>.</summary>
    public string Id => Part.Id;
}
