using System.Collections.Immutable;
using FixScore.Analysis.Agreement;
using FixScore.Analysis.Ranking;

namespace FixScore.Analysis.Comparing;

/// <summary>How the ranking of devices depends on the profile.</summary>
/// <remarks>Immutable and thread safe.</remarks>
public sealed record ProfileComparison
{
    /// <summary>The cause of a reversal that no criterion but a cap by gates makes.</summary>
    public const string Gates = Contributions.Gates;

    /// <summary>Ids of the records.</summary>
    public required ImmutableArray<string> Devices { get; init; }

    /// <summary>Ids of the profiles, as <c>id@version</c> where an id stands twice.</summary>
    public required ImmutableArray<string> Profiles { get; init; }

    /// <summary>Exact totals after gates, by device and profile, each on the scale of its profile; more is better.</summary>
    public required ImmutableArray<ImmutableArray<Interval>> Scores { get; init; }

    /// <summary>Ranks, by device and profile; less is better.</summary>
    public required ImmutableArray<ImmutableArray<Rank>> Ranks { get; init; }

    /// <summary>Every pair of profiles, in order.</summary>
    public required ImmutableArray<ProfilePair> Pairs { get; init; }

    /// <summary>How far all profiles agree at once, on the middles of places; meaningful for two or more.</summary>
    public Concordance Concordance => Concordance.Of([.. Profiles.Select((_, profile) => Ranks.Select(row => row[profile].Middle).ToImmutableArray())]);

    /// <summary>What holds under any weights of all that the profiles look at. A line that was left out of a score counts as open.</summary>
    public required Dominance Dominance { get; init; }

    /// <summary>Scores records by profiles and compares.</summary>
    /// <inheritdoc cref="ProfileScores.Of" path="/exception"/>
    /// <exception cref="ArgumentException">An id of a record stands twice.</exception>
    public static ProfileComparison Of(
        ImmutableArray<RecordDocument> records, ImmutableArray<Profile> profiles, ScoringMode mode = ScoringMode.Strict, CancellationToken cancellation = default) =>
        Of([.. profiles.Select(profile => ProfileScores.Of(records, profile, mode, cancellation))]);

    /// <summary>Compares scores that were made before.</summary>
    /// <param name="scores">For each profile the scores of the same devices in the same order.</param>
    /// <exception cref="ArgumentException">Devices differ, one stands twice, or there is none; or a score was not made by its profile.</exception>
    public static ProfileComparison Of(ImmutableArray<ProfileScores> scores)
    {
        Check(scores);
        var ranks = scores.Select(each => Ranking.Ranks.Of(each.Totals)).ToArray();
        return new()
        {
            Devices = scores[0].Devices,
            Profiles = [.. scores.Select(each => NameOf(each.Profile, scores))],
            Scores = [.. scores[0].Devices.Select((_, device) => scores.Select(each => each.Totals[device]).ToImmutableArray())],
            Ranks = [.. scores[0].Devices.Select((_, device) => ranks.Select(each => each[device]).ToImmutableArray())],
            Pairs = ProfilePairs.Of(scores, ranks),
            Dominance = Dominance.Of(Lines.Of(scores)),
        };
    }

    static string NameOf(Profile profile, ImmutableArray<ProfileScores> all) =>
        all.Count(each => each.Profile.Id == profile.Id) == 1 ? profile.Id : $"{profile.Id}@{profile.Version}";

    static void Check(ImmutableArray<ProfileScores> scores)
    {
        if (scores.IsEmpty || scores[0].Scores.IsEmpty) throw new ArgumentException("There is nothing to compare.", nameof(scores));
        if (scores.Any(each => !each.Devices.SequenceEqual(scores[0].Devices, StringComparer.Ordinal)))
            throw new ArgumentException("All profiles must score the same devices in the same order.", nameof(scores));
        if (scores[0].Devices.Distinct(StringComparer.Ordinal).Count() < scores[0].Devices.Length) throw new ArgumentException("A device stands twice.", nameof(scores));
        if (scores.Any(each => each.Scores.Any(score => score.Profile.Digest != each.Profile.Digest)))
            throw new ArgumentException("A score was not made by its profile.", nameof(scores));
    }
}
