using FixScore.Cli.Tests.Support;

[assembly: FixScore.Plugin<FailingPlugin>]

namespace FixScore.Cli.Tests.Support;

/// <summary>A plugin that fails in each way a plugin can. This very assembly is its file.</summary>
public sealed class FailingPlugin : IPlugin
{
    /// <summary>Id of records that its check throws on.</summary>
    public const string Dreaded = "dreaded";

    public static string File => typeof(FailingPlugin).Assembly.Location;

    /// <summary>A profile of which half is a criterion that throws.</summary>
    public static byte[] Profile => """
        {
          "format": "fixscore-profile/1", "id": "half-failing", "version": "1.0.0", "title": "Half failing", "status": "draft",
          "source": { "title": "a test", "locator": "here", "date": "2026-01-01" },
          "scale": { "min": 0, "max": 10, "decimals": 1, "rounding": "half-up" },
          "root": { "id": "total", "aggregate": "weighted-arithmetic", "of": [
            { "id": "one", "weight": 1, "criterion": "test.throws" },
            { "id": "two", "weight": 1, "criterion": "documentation" } ] }
        }
        """u8.ToArray();

    public void Register(IPluginRegistry registry) => registry.Add(new Throws()).Add(new Demands()).Add(new Dreads());

    sealed class Throws : IDeviceCriterion
    {
        public CriterionInfo Info { get; } = new("test.throws", 1, "Throws", "nothing", "1", Direction.MoreIsBetter, "a test", [], []);

        public Outcome Judge(DeviceContext context) => throw new InvalidOperationException("no");
    }

    sealed class Demands : IRequirementSet
    {
        public RequirementInfo Info { get; } = new("test.demands", 1, "Demands", "a test", "None.", []);

        public IEnumerable<Finding> Check(RequirementContext context) => throw new InvalidOperationException("no");
    }

    sealed class Dreads : IRecordCheck
    {
        public string Id => "test.dreads";

        public IEnumerable<Problem> Check(TeardownCase source) =>
            source.Record.Id == Dreaded ? throw new InvalidOperationException("no") : [];
    }
}
