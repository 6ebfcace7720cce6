using System.Collections.Immutable;

namespace FixScore.Settings;

/// <summary>A setting and where it was stated.</summary>
readonly record struct Stated(string Text, Pointer At);

/// <summary>What one source of settings states, paths already full, and what is wrong with its form.</summary>
sealed record StatedSettings(ImmutableArray<Stated> Folders, ImmutableArray<Stated> Plugins, Stated? Profile, ImmutableArray<Problem> Problems)
{
    public static StatedSettings None { get; } = new([], [], null, []);

    /// <summary>All together: lists are joined without repeats, the last profile holds.</summary>
    public static StatedSettings Joined(IReadOnlyCollection<StatedSettings> all) => new(
        [.. all.SelectMany(each => each.Folders).DistinctBy(each => each.Text, StringComparer.Ordinal)],
        [.. all.SelectMany(each => each.Plugins).DistinctBy(each => each.Text, StringComparer.Ordinal)],
        all.LastOrDefault(each => each.Profile is not null)?.Profile,
        [.. all.SelectMany(each => each.Problems).DistinctBy(problem => (problem.At, problem.Message))]);
}
