using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using FixScore.Canonical;
using FixScore.Criteria.Documentation;
using FixScore.Tests.Samples;

namespace FixScore.Extensions.Tests;

public sealed class Plugin_loading_tests : IDisposable
{
    readonly Workspace workspace = new();

    [Fact]
    public void A_plugin_file_scores_and_the_document_names_its_digest()
    {
        var score = Bench.Score(Bench.With(SamplePlugins.Marks), ScoringMode.Strict, "acme.marks");

        Assert.Equal(new Interval(3m, 3m), score.Total);
        var plugin = Assert.Single(score.Plugins);
        Assert.Equal(("Acme.Marks", "1.2.0", Digest.Of(File.ReadAllBytes(SamplePlugins.Marks))), (plugin.Id, plugin.Version, plugin.Digest));
        var units = Path.Combine(Path.GetDirectoryName(SamplePlugins.Marks)!, "Acme.Units.dll");
        Assert.Equal(new PluginDependency("Acme.Units.dll", Digest.Of(File.ReadAllBytes(units))), Assert.Single(plugin.Dependencies));
    }

    [Fact]
    public void Two_plugins_use_two_versions_of_one_library_side_by_side()
    {
        var catalogue = Bench.With(SamplePlugins.Marks, SamplePlugins.Labels);
        var score = Bench.Score(catalogue, ScoringMode.Strict, "acme.marks", "acme.labels");

        Assert.Equal([3.75m, 3m, 4.5m], score.Nodes.Select(node => node.Value.Low));
        Assert.Equal(["1.0.0.0", "2.0.0.0"], AssemblyLoadContext.All.Where(context => context.Name == SamplePlugins.Marks || context.Name == SamplePlugins.Labels)
            .SelectMany(context => context.Assemblies).Select(assembly => assembly.GetName()).Where(name => name.Name == "Acme.Units").Select(name => name.Version!.ToString()).Distinct().Order());
        // Contexts are collected once nothing holds their plugins.
        GC.KeepAlive(catalogue);
    }

    [Fact]
    public void Contracts_are_those_of_the_program_though_a_copy_lies_beside_the_plugin()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "own"));
        var catalogue = Bench.With(file);

        Assert.True(File.Exists(Path.Combine(workspace.Folder, "own", "FixScore.Abstractions.dll")));
        Assert.Equal(["Acme.Marks", "Acme.Units"], AssemblyLoadContext.All.Single(context => context.Name == file).Assemblies.Select(assembly => assembly.GetName().Name).Order());
        GC.KeepAlive(catalogue);
    }

    [Fact]
    public void A_plugin_is_unloaded_once_its_catalogue_is_gone()
    {
        var context = Used(SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "short-lived")));

        for (var i = 0; i < 50 && context.IsAlive; i++)
        {
            GC.Collect();
            GC.WaitForPendingFinalizers();
            Thread.Sleep(20);
        }
        Assert.False(context.IsAlive);
    }

    // By itself, so that nothing of it stays on the stack of the test.
    [MethodImpl(MethodImplOptions.NoInlining)]
    static WeakReference Used(string file)
    {
        var catalogue = Bench.With(file);
        var score = Bench.Score(catalogue, ScoringMode.Strict, "acme.marks");
        Assert.Equal(3m, score.Total.Low);
        var context = new WeakReference(AssemblyLoadContext.All.Single(context => context.Name == file));
        GC.KeepAlive(catalogue);
        return context;
    }

    [Fact]
    public void The_same_build_twice_is_installed_once() =>
        Assert.Single(Bench.With(SamplePlugins.Marks, SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "again"))).Criteria);

    [Fact]
    public void Another_build_of_it_is_refused_and_both_files_are_named()
    {
        var other = SamplePlugins.Copy(SamplePlugins.Marks, Path.Combine(workspace.Folder, "other"));
        SamplePlugins.BuildAgain(other);
        var builder = new CatalogueBuilder().AddFile(new(SamplePlugins.Marks), Workspace.Trusting);

        var problem = Assert.Single(Assert.Throws<PluginFileException>(() => builder.AddFile(new(other), Workspace.Trusting)).Problems);

        Assert.Equal("plugin-id-taken", problem.Code);
        Assert.Equal($"The id 'acme.marks' of Acme.Marks 1.2.0 ({other}) is taken by Acme.Marks 1.2.0 ({SamplePlugins.Marks}).", problem.Message);
    }

    [Fact]
    public void A_plugin_whose_id_is_taken_leaves_nothing_behind_and_the_rest_goes_on()
    {
        var builder = new CatalogueBuilder().Add(new DocumentationPlugin()).Add(new Impostor());
        var problem = Assert.Single(Assert.Throws<PluginFileException>(() => builder.AddFile(new(SamplePlugins.Unruly), Workspace.Trusting)).Problems);

        Assert.Contains("'acme.allocates' of Acme.Unruly 1.0.0", problem.Message, StringComparison.Ordinal);
        Assert.Contains("is taken by FixScore.Extensions.Tests", problem.Message, StringComparison.Ordinal);
        Assert.Equal(["acme.allocates", "documentation", "repair-information"], builder.Build().Criteria.Select(each => each.Item.Info.Id));
    }

    public void Dispose() => workspace.Dispose();

    sealed class Impostor : IDeviceCriterion
    {
        public CriterionInfo Info { get; } = new("acme.allocates", 1, "Impostor", "nothing", "1", Direction.MoreIsBetter, "a test", [], []);

        public Outcome Judge(DeviceContext context) => Outcome.Scored(context.Scale.Max);
    }
}
