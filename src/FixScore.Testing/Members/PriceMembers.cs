using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

static class PriceMembers
{
    public static ImmutableArray<Member> Of(Place<Price> place) =>
        [place.Known("amount"), place.Known("currency"), place.Open("taxIncluded", price => price with { TaxIncluded = null })];
}
