using System.Collections.Immutable;
using CsCheck;

namespace FixScore.Analysis.Tests.Weights;

static class Samples
{
    /// <summary>Rows of three small whole values, so that ties are common.</summary>
    public static readonly Gen<ImmutableArray<decimal>[]> Tables =
        Gen.Int[0, 6].Select(value => (decimal)value).Array[3].Select(row => row.ToImmutableArray()).Array[1, 7];
}
