using System.Collections.Immutable;

namespace FixScore.Analysis.Assessors;

/// <summary>How far two observers agree on words beyond chance: J. Cohen, A coefficient of agreement for nominal scales, 1960. Immutable and thread safe.</summary>
/// <param name="Observed">Share of the units on which both agree.</param>
/// <param name="Expected">Share on which both would agree by chance, from how often each uses each word.</param>
public sealed record CohenKappa(double Observed, double Expected)
{
    /// <summary>1 for full agreement, 0 for chance; <c>null</c> when both use one and the same word throughout.</summary>
    public double? Kappa => Expected >= 1 ? null : (Observed - Expected) / (1 - Expected);

    /// <summary>From a table of counts: a row for each word of the one observer, a column for each of the other, in the same order.</summary>
    /// <exception cref="ArgumentException">The table is not square, or holds nothing.</exception>
    public static CohenKappa Of(ImmutableArray<ImmutableArray<int>> counts)
    {
        if (counts.Any(row => row.Length != counts.Length)) throw new ArgumentException("The table is not square.", nameof(counts));
        double all = counts.Sum(row => row.Sum());
        if (all == 0) throw new ArgumentException("Nothing was observed.", nameof(counts));
        var words = Enumerable.Range(0, counts.Length).ToArray();
        return new(words.Sum(word => counts[word][word]) / all, words.Sum(word => counts[word].Sum() / all * (counts.Sum(row => row[word]) / all)));
    }

    /// <summary>From the words themselves, unit by unit; units that one of both did not judge (<c>null</c>) are left out.</summary>
    /// <exception cref="ArgumentException">They differ in length, or no unit was judged by both.</exception>
    public static CohenKappa Of(ImmutableArray<string?> one, ImmutableArray<string?> other)
    {
        if (one.Length != other.Length) throw new ArgumentException("Both must observe the same units.", nameof(other));
        var both = one.Zip(other).Where(pair => pair.First is not null && pair.Second is not null).ToArray();
        var words = both.SelectMany(pair => (string[])[pair.First!, pair.Second!]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        return Of([.. words.Select(row => words.Select(column => both.Count(pair => pair.First == row && pair.Second == column)).ToImmutableArray())]);
    }
}
