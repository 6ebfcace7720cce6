using PublicApiGenerator;

namespace FixScore.Architecture.Tests;

/// <summary>What others build on is written down, one text a package: whoever changes it sees it, and so does whoever reviews.</summary>
/// <remarks>After a wanted change run these tests with FIXSCORE_APPROVE=1, read what git says has changed, and note it in the change log.</remarks>
public sealed class Public_api_tests
{
    const string Folder = "tests/FixScore.Architecture.Tests/PublicApi";

    // The first depends on the clone, the second is nobody's to build on.
    static readonly ApiGeneratorOptions Written = new()
    {
        ExcludeAttributes = ["System.Reflection.AssemblyMetadataAttribute", "System.Runtime.CompilerServices.InternalsVisibleToAttribute"],
    };

    static readonly string[] Packages = [.. House.Rooms.Where(room => room != "FixScore.Cli")];

    public static TheoryData<string> Libraries => [.. Packages];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void The_public_API_is_the_one_that_was_approved(string package)
    {
        var file = Path.Combine(House.Root, Folder, package + ".txt");
        var now = House.Load(package).GeneratePublicApi(Written).ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("FIXSCORE_APPROVE") == "1") File.WriteAllText(file, now);
        Assert.True(File.Exists(file), $"Nobody has approved the public API of {package}: {Folder}/{package}.txt is missing.");
        var changes = LineChanges.Between(File.ReadAllText(file).ReplaceLineEndings("\n"), now);
        Assert.True(changes.Length == 0, $"The public API of {package} has changed. If that is wanted, see DEVELOPERS.md.\n{changes}");
    }

    [Fact]
    public void No_text_is_left_of_a_package_that_is_gone() => Assert.Equal(
        Packages, House.Files(Folder, "*").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal));

    [Fact]
    public void A_member_that_is_gone_and_one_that_is_new_are_told_with_their_type() => Assert.Equal(
        "public sealed class Joint\n- public int Screws { get; }\n+ public int Bonds { get; }\n",
        LineChanges.Between(
            "    public sealed class Bond\n    {\n        public int Parts { get; }\n    }\n    public sealed class Joint\n    {\n        public int Screws { get; }\n        public int Parts { get; }\n    }\n",
            "    public sealed class Bond\n    {\n        public int Parts { get; }\n    }\n    public sealed class Joint\n    {\n        public int Bonds { get; }\n        public int Parts { get; }\n    }\n"));

    [Fact]
    public void The_same_text_has_no_changes() => Assert.Equal("", LineChanges.Between("one\ntwo\n", "one\ntwo\n"));
}
