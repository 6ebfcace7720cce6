using System.Collections.Immutable;

namespace FixScore.Cli.Installed;

/// <summary>Plugin files that cannot be used: all of them at once.</summary>
sealed class RefusedPluginsException(ImmutableArray<PluginFileException> refused) : Exception(refused[0].Message)
{
    /// <summary>What is wrong and what to do, in lines.</summary>
    public IEnumerable<string> Lines =>
        from file in refused
        from problem in file.Problems
        from line in (string[])[$"{file.Path} {problem.Code} {problem.Message}", .. problem.Hint.Split('\n').Select(line => "  " + line)]
        select line;
}
