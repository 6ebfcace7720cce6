using System.Collections.Immutable;

namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>The choices in a profile that are tried by scoring again, the one made by the profile first or, of band factors, in the middle. Immutable and thread safe.</summary>
/// <param name="Lines">The lines directly below the total.</param>
/// <param name="Banded">Numbers of the lines that make points by bands or levels.</param>
/// <param name="Bands">How their points are varied.</param>
/// <param name="Unknown">Policies for what is unknown; <c>null</c> for the profile's.</param>
/// <param name="Readings">The profile as it is, and as each other reading of a silent point makes it.</param>
/// <param name="Gates">The gates.</param>
sealed record ProfileChoices(
    ProfileLines Lines, ImmutableArray<int> Banded, BandVariation Bands, ImmutableArray<UnknownPolicy?> Unknown, ImmutableArray<Profile> Readings, ImmutableArray<Gate> Gates)
{
    // So that the number of runs has a bound.
    const int MostReadings = 50;

    public ImmutableArray<decimal> Factors => Banded.IsEmpty ? [1m] : [.. Bands.Factors];

    public int Unmoved => Banded.IsEmpty ? 0 : Bands.Unmoved;

    /// <summary>How often a record is scored.</summary>
    public int Runs => Factors.Length * Unknown.Length * Readings.Length;

    public static ProfileChoices? Of(Profile profile, BandVariation bands)
    {
        if (ProfileLines.Of(profile) is not { } lines) return null;
        return new(
            lines, [.. Enumerable.Range(0, lines.Nodes.Length).Where(line => LeafChange.HasBands(lines.Nodes[line]))], bands,
            Policies(profile), [profile, .. profile.Readings.SelectMany(reading => reading.Otherwise).Select(other => other.Profile).Where(other => Fits(other, lines)).Take(MostReadings)],
            profile.Gates);
    }

    /// <summary>The profile under one way through the choices.</summary>
    public Profile At(int reading, int unknown, int factor)
    {
        var moved = Readings[reading].WithPoints(Factors[factor]) with { Readings = [] };
        return Unknown[unknown] is { } policy ? moved.WithUnknown(policy) : moved;
    }

    // What is the policy of every leaf already is no other way.
    static ImmutableArray<UnknownPolicy?> Policies(Profile profile)
    {
        var own = profile.Nodes.OfType<LeafNode>().Select(leaf => leaf.Unknown).Distinct().ToArray();
        return [null, .. Enum.GetValues<UnknownPolicy>().Where(policy => own is not [var only] || policy != only).Select(policy => (UnknownPolicy?)policy)];
    }

    // A reading under which the total has a line that it has not otherwise, or is another mean, has no place among drawn weights.
    static bool Fits(Profile other, ProfileLines lines) => ProfileLines.Of(other) is { } read && !read.Ids.Except(lines.Ids, StringComparer.Ordinal).Any();
}
