namespace FixScore.Tests.Criteria;

/// <summary>Criteria under the names that the profiles of these tests use.</summary>
sealed class FakePlugin : IPlugin
{
    public static Catalogue Catalogue { get; } = Catalogue.Of(new FakePlugin());

    public void Register(IPluginRegistry registry) => registry
        .Add(new DeviceCriterion("fastener-diversity", Options.Bands("bands", Bands.AtMost((2, 1m), (6, 0.5m)), "kinds", "Kinds of fastener to points.")))
        .Add(new DeviceCriterion("documentation"))
        .Add(new PartCriterion("adhesive-strength"))
        .Add(new PartCriterion("part-modularity"))
        .Add(new PartCriterion("software-pairing"))
        .Add(EveryOption.Criterion);
}
