using System.Collections.Immutable;
using System.Reflection;
using FixScore.Plugins;
using Snapshooter.Xunit;

namespace FixScore.Tests.Plugins;

/// <summary>Everything that can be wrong with a plugin file, in the words that people read.</summary>
public sealed class PluginProblemTests
{
    static readonly AssemblyName By = new("Acme.Latches, Version=1.2.0.0"), Asked = new("Acme.Shapes, Version=3.1.0.0"), Any = new("Acme.Shapes");

    [Fact]
    public void Each_says_what_is_wrong_and_what_to_do() => Snapshot.Match(string.Join("\n", All().Select(problem => $"{problem.Severity} {problem.Code}\n  {problem.Message}\n  {problem.Hint}\n")));

    [Fact]
    public void Each_has_a_code_of_its_own() => Assert.Distinct(All().Select(problem => $"{problem.Code} {problem.Message}"));

    static IEnumerable<Problem> All() =>
    [
        PluginProblems.Missing(), PluginProblems.Unreadable(), PluginProblems.NotAnAssembly(), PluginProblems.NotNamed(),
        PluginProblems.OtherContract(By, new(0, 3), new(0, 1)), PluginProblems.OtherContract(By, new(1, 0), new(0, 1)),
        PluginProblems.ListUnreadable("latches.deps.json"), PluginProblems.DependencyMissing(By, Asked), PluginProblems.DependencyMissing(By, Any),
        PluginProblems.DependencyOld(By, Asked, new PluginImage("shapes.dll", [], new("Acme.Shapes, Version=3.0.0.0"), [], false)), PluginProblems.DependencyUnreadable(By, "shapes.dll"),
        PluginProblems.Unpinned("Pin it."), PluginProblems.Changed("sha256:11", "sha256:22", "Pin it again."),
        PluginProblems.DependencyUnpinned("Acme.Shapes", "Pin it."), PluginProblems.DependencyChanged("Acme.Shapes", "sha256:11", "sha256:22", "Pin it again."),
        PluginProblems.WrongPlatform(), PluginProblems.TypeMissing("Acme.Shapes.Round"), PluginProblems.Threw("InvalidOperationException"),
        PluginProblems.Unusable("The id 'Latch' is no slug."), PluginProblems.IdTaken("'acme.latch' is there already."),
    ];
}
