using System.Collections.Immutable;

namespace FixScore.Reading;

static class Lists
{
    public static ImmutableArray<T> OrEmpty<T>(this ImmutableArray<T> list) => list.IsDefault ? [] : list;
}
