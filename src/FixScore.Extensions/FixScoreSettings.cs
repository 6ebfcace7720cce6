using System.Collections.Immutable;

namespace FixScore;

/// <summary>The settings in force, after everything stated was joined. Immutable and thread safe.</summary>
/// <param name="ProfileFolders">Folders of profiles, as full paths, in the order stated; of two profiles with the same id and version the first is kept.</param>
/// <param name="DefaultProfile">The profile that scores when none is named, <c>ID</c> or <c>ID@VERSION</c>; <c>null</c> when there is none.</param>
/// <param name="Plugins">Plugin files, as full paths, in the order stated.</param>
public sealed record FixScoreSettings(ImmutableArray<string> ProfileFolders, string? DefaultProfile, ImmutableArray<string> Plugins);

/// <summary>Settings that cannot be used, with everything that is wrong with them.</summary>
/// <param name="problems">The problems; their pointers lead into the settings, the root stands for settings made in code.</param>
public sealed class InvalidSettingsException(ImmutableArray<Problem> problems)
    : Exception(string.Join('\n', problems.Select(problem => $"{problem.Message} {problem.Hint} ({(problem.At == Pointer.Root ? "set in code" : problem.At)})")))
{
    /// <summary>All problems: first those of form, then folders, plugins and the default profile.</summary>
    public ImmutableArray<Problem> Problems { get; } = problems;
}
