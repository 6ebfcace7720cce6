using FixScore.Tests.Samples;

namespace FixScore.Extensions.Tests;

/// <summary>A plugin that does not fit is told so in plain words, before any of it runs wherever that can be seen.</summary>
public sealed class Plugin_refusal_tests : IDisposable
{
    readonly Workspace workspace = new();

    [Fact]
    public void A_file_that_is_not_there_or_a_folder_is_named()
    {
        Assert.Equal(["plugin-file-missing"], Bench.CodesOf(Path.Combine(workspace.Folder, "none.dll")));
        Assert.Equal(["plugin-file-unreadable"], Bench.CodesOf(workspace.Folder));
    }

    [Theory]
    [InlineData("")]
    [InlineData("text")]
    [InlineData("MZ and nothing more")]
    public void A_file_that_is_no_assembly_is_refused(string text) => Assert.Equal(["plugin-not-an-assembly"], Bench.CodesOf(workspace.Write("text.dll", text)));

    [Fact]
    public void Half_an_assembly_is_none()
    {
        var bytes = File.ReadAllBytes(SamplePlugins.Marks);
        foreach (var part in (int[])[2, 3, 5, 9])
        {
            var file = Path.Combine(workspace.Folder, $"half-{part}.dll");
            File.WriteAllBytes(file, bytes[..(bytes.Length / part)]);
            Assert.Equal(["plugin-not-an-assembly"], Bench.CodesOf(file));
        }
    }

    [Fact]
    public void An_assembly_that_names_no_plugin_is_refused() =>
        Assert.Equal(["plugin-not-named"], Bench.CodesOf(Path.Combine(Path.GetDirectoryName(SamplePlugins.Marks)!, "Acme.Units.dll")));

    [Fact]
    public void A_plugin_for_a_newer_contract_is_refused_with_what_was_found_and_what_is_needed()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "newer"));
        var own = typeof(ICriterion).Assembly.GetName().Version!;
        SamplePlugins.BuildFor(file, (ushort)own.Major, (ushort)(own.Minor + 7));

        var problem = Assert.Single(Bench.Refused(file).Problems);

        Assert.Equal("plugin-needs-newer-contract", problem.Code);
        Assert.Equal($"Acme.Marks was built for version {own.Major}.{own.Minor + 7} of the contract FixScore.Abstractions; this program has {own.Major}.{own.Minor}.", problem.Message);
        Assert.Equal("Update this program, or get the plugin built for a version no later than its own.", problem.Hint);
    }

    [Fact]
    public void A_plugin_for_another_major_version_is_refused()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "major"));
        SamplePlugins.BuildFor(file, 9, 0);
        Assert.Equal(["plugin-other-contract"], Bench.CodesOf(file));
    }

    [Fact]
    public void A_dependency_that_is_missing_is_named_with_its_version()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "alone"));
        File.Delete(Path.Combine(workspace.Folder, "alone", "Acme.Units.dll"));

        var problem = Assert.Single(Bench.Refused(file).Problems);

        Assert.Equal(("plugin-dependency-missing", "Acme.Marks needs Acme.Units 1.0.0.0, which is neither beside it nor part of this program."), (problem.Code, problem.Message));
    }

    [Fact]
    public void A_dependency_that_is_too_old_or_damaged_is_named()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Labels, Path.Combine(workspace.Folder, "mixed"));
        var library = Path.Combine(workspace.Folder, "mixed", "Acme.Units.dll");
        File.Copy(Path.Combine(Path.GetDirectoryName(SamplePlugins.Marks)!, "Acme.Units.dll"), library, overwrite: true);
        Assert.Equal(["plugin-dependency-old"], Bench.CodesOf(file));

        File.WriteAllText(library, "text");
        Assert.Equal(["plugin-dependency-unreadable"], Bench.CodesOf(file));
    }

    [Fact]
    public void A_dependency_that_lacks_what_the_plugin_uses_is_told()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "later"));
        File.Copy(Path.Combine(Path.GetDirectoryName(SamplePlugins.Labels)!, "Acme.Units.dll"), Path.Combine(workspace.Folder, "later", "Acme.Units.dll"), overwrite: true);

        var problem = Assert.Single(Bench.Refused(file).Problems);

        Assert.Equal("plugin-type-missing", problem.Code);
        Assert.Contains("Tenths", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_of_dependencies_that_cannot_be_read_is_told()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "listed"));
        File.WriteAllText(Path.ChangeExtension(file, ".deps.json"), "{ no");
        Assert.Equal(["plugin-dependency-list-unreadable"], Bench.CodesOf(file));
    }

    [Fact]
    public void A_constructor_that_throws_is_named_by_its_exception_and_nothing_else()
    {
        var failure = Bench.Refused(SamplePlugins.Broken);

        Assert.Equal(("plugin-threw", "It failed while it was made or registered (NotSupportedException)."), (failure.Problems[0].Code, failure.Problems[0].Message));
        Assert.DoesNotContain("   at ", failure.Message, StringComparison.Ordinal);
    }

    public void Dispose() => workspace.Dispose();
}
