using FixScore.Records;
using Microsoft.Extensions.DependencyInjection;

namespace FixScore.Extensions.Tests;

public sealed class Direct_registration_tests : IDisposable
{
    readonly Workspace workspace = new Workspace().WithProfile("own", criterion: "acme.parts");

    [Fact]
    public void A_criterion_without_a_plugin_scores_and_its_assembly_is_named()
    {
        using var provider = new ServiceCollection().AddFixScoreCriterion<Parts>().AddFixScoreCriterion<Parts>().AddFixScore(setup: Rules).BuildServiceProvider();

        var score = provider.GetRequiredService<ScoringDesk>().ScoreFile(Workspace.Record);

        Assert.Equal("FixScore.Extensions.Tests", Assert.Single(score.Plugins).Id);
        Assert.Equal(new Interval(10, 10), score.Total);
    }

    [Fact]
    public void A_record_check_without_a_plugin_is_run()
    {
        using var provider = new ServiceCollection().AddFixScoreRecordCheck<NoParts>().AddFixScore(setup: Rules).AddFixScoreCriterion<Parts>().BuildServiceProvider();

        var read = provider.GetRequiredService<ScoringDesk>().Read(File.ReadAllBytes(Workspace.Record));

        Assert.Contains(read.Problems, problem => problem.Problem.Code == "acme-parts");
    }

    [Fact]
    public void A_set_of_requirements_without_a_plugin_is_installed_with_its_assembly()
    {
        using var provider = new ServiceCollection().AddFixScoreRequirements<Nothing>().BuildServiceProvider();

        Assert.Equal("FixScore.Extensions.Tests", Assert.Single(provider.GetRequiredService<Catalogue>().Requirements).Plugin.Id);
    }

    void Rules(FixScoreSetup setup) => setup.AddProfileFolder(Path.Combine(workspace.Folder, "rules")).UseProfile("own");

    public void Dispose() => workspace.Dispose();

    sealed class Parts : IDeviceCriterion
    {
        public CriterionInfo Info { get; } = new("acme.parts", 1, "Parts", "parts", "parts", Direction.MoreIsBetter, "own judgement, no source", ["parts[]"], []);

        public Outcome Judge(DeviceContext context) => Outcome.Scored(context.Scale.Max);
    }

    sealed class NoParts : IRecordCheck
    {
        public string Id => "acme.no-parts";

        public IEnumerable<Problem> Check(TeardownCase source) =>
            [Problem.Of(Severity.Warning, Pointer.Root.Child("parts"), "acme-parts", "There are {count} parts.", "None is asked.", ("count", source.Record.Parts.Count))];
    }

    sealed class Nothing : IRequirementSet
    {
        public RequirementInfo Info { get; } = new("acme.nothing", 1, "Nothing", "own judgement, no source", "None.", []);

        public IEnumerable<Finding> Check(RequirementContext context) => [];
    }
}
