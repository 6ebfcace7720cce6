using System.Collections.Immutable;

namespace FixScore.Settings;

/// <summary>A setting and where it was stated.</summary>
readonly record struct Stated(string Text, Pointer At);

/// <summary>A plugin file that was stated, and where.</summary>
readonly record struct StatedPlugin(PluginRequest Request, Pointer At);

/// <summary>What one source of settings states, paths already full, and what is wrong with its form.</summary>
sealed record StatedSettings(ImmutableArray<Stated> Folders, ImmutableArray<StatedPlugin> Plugins, Stated? Profile, ImmutableArray<Problem> Problems, PluginTerms? Terms = null)
{
    public static StatedSettings None { get; } = new([], [], null, []);

    /// <summary>All together: lists are joined without repeats, a pinned plugin before one without pins; the last profile and the last terms hold.</summary>
    public static StatedSettings Joined(IReadOnlyCollection<StatedSettings> all) => new(
        [.. all.SelectMany(each => each.Folders).DistinctBy(each => each.Text, StringComparer.Ordinal)],
        WithPins([.. all.SelectMany(each => each.Plugins)]),
        all.LastOrDefault(each => each.Profile is not null)?.Profile,
        [.. all.SelectMany(each => each.Problems).DistinctBy(problem => (problem.At, problem.Message))],
        all.LastOrDefault(each => each.Terms is not null)?.Terms);

    // In the order stated; what stands twice with different pins is asked for twice, so that the pin that does not fit is told.
    static ImmutableArray<StatedPlugin> WithPins(ImmutableArray<StatedPlugin> all) =>
        [.. all.Where(each => each.Request.Sha256 is not null || !all.Any(other => other.Request.Sha256 is not null && other.Request.File == each.Request.File))
            .DistinctBy(each => (each.Request.File, each.Request.Sha256))];
}
