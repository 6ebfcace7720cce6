using System.Collections.Immutable;

namespace FixScore;

/// <summary>A plugin file that cannot be used. Nothing of it was installed.</summary>
/// <param name="path">The file.</param>
/// <param name="problems">Everything that is wrong with it.</param>
/// <param name="inner">What happened.</param>
public sealed class PluginFileException(string path, ImmutableArray<Problem> problems, Exception? inner = null)
    : Exception($"The plugin file {path} cannot be used. {string.Join(' ', problems.Select(problem => $"{problem.Message} {problem.Hint}"))}", inner)
{
    /// <summary>The file.</summary>
    public string Path { get; } = path;

    /// <summary>Everything that is wrong with it: code, facts, text and what to do. Pointers lead nowhere: there is no document.</summary>
    public ImmutableArray<Problem> Problems { get; } = problems;
}
