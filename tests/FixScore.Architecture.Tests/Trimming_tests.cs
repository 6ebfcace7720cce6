using System.Reflection;

namespace FixScore.Architecture.Tests;

/// <summary>Programs that are trimmed or compiled ahead of time lose nothing that a library needs.</summary>
public sealed class Trimming_tests
{
    /// <summary>Settings and the command line may name plugin files, which a trimmer cannot see.</summary>
    static readonly string[] LoadPlugins = ["FixScore.Cli", "FixScore.Extensions"];

    public static TheoryData<string> Libraries => [.. House.Rooms.Except(LoadPlugins)];

    public static TheoryData<string> Others => [.. LoadPlugins];

    // The build asks the analysers and their warnings are errors; these marks say that it did.
    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_library_is_built_under_the_analysers_for_trimming_and_native_code(string room)
    {
        Assert.Contains("IsTrimmable", Marks(room));
        Assert.Contains("IsAotCompatible", Marks(room));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void What_loads_plugin_files_promises_nothing_of_the_kind(string room) => Assert.DoesNotContain("IsAotCompatible", Marks(room));

    [Fact]
    public void Nobody_silences_them() => Assert.DoesNotContain(
        new[] { "src", "plugins", "samples" }.SelectMany(folder => House.Files(folder, "*.cs").Concat(House.Files(folder, "*.csproj")).Concat(House.Files(folder, "*.props"))),
        path => House.Lines(path).Any(line => Silences.Any(word => line.Contains(word, StringComparison.Ordinal))));

    static string[] Marks(string room) =>
        [.. House.Load(room).GetCustomAttributes<AssemblyMetadataAttribute>().Where(mark => mark.Value == "True").Select(mark => mark.Key)];

    static readonly string[] Silences = ["UnconditionalSuppressMessage", "pragma warning disable IL", "NoWarn>$(NoWarn);IL", "SuppressTrimAnalysisWarnings", "SuppressAotAnalysisWarnings"];
}
