using System.Reflection;
using FixScore.Criteria.Adhesives;
using FixScore.Criteria.Cost;
using FixScore.Criteria.Disassembly;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Fasteners;
using FixScore.Criteria.Locks;
using FixScore.Criteria.Modularity;
using FixScore.Criteria.Safety;
using FixScore.Criteria.Spares;
using FixScore.Criteria.Support;
using FixScore.Criteria.Time;

namespace FixScore.Criteria.Tests;

public sealed class Plugins_tests
{
    public static TheoryData<Type, string> Plugins => new()
    {
        { typeof(AdhesivesPlugin), "adhesive-strength" },
        { typeof(CostPlugin), "repair-cost-ratio" },
        { typeof(DisassemblyPlugin), "disassembly-depth" },
        { typeof(DisassemblyPlugin), "fastener-reuse" },
        { typeof(DisassemblyPlugin), "tool-access" },
        { typeof(DocumentationPlugin), "documentation" },
        { typeof(DocumentationPlugin), "repair-information" },
        { typeof(FastenersPlugin), "fastener-diversity" },
        { typeof(LocksPlugin), "lock-freedom" },
        { typeof(ModularityPlugin), "part-modularity" },
        { typeof(SafetyPlugin), "hazard-exposure" },
        { typeof(SparesPlugin), "spare-availability" },
        { typeof(SparesPlugin), "spare-price-ratio" },
        { typeof(SparesPlugin), "spare-terms" },
        { typeof(SupportPlugin), "software-support" },
        { typeof(TimePlugin), "disassembly-time" },
    };

    [Theory]
    [MemberData(nameof(Plugins))]
    public void An_assembly_names_its_plugin_and_the_plugin_offers_its_criterion(Type plugin, string criterion)
    {
        var named = plugin.Assembly.GetCustomAttribute<PluginAttribute>()!.Create();
        Assert.IsType(plugin, named);
        Assert.True(Catalogue.Of(named).TryGetCriterion(criterion, out var installed));
        Assert.Equal(plugin.Assembly.GetName().Name, installed.Plugin.Id);
    }

    [Fact]
    public void Every_option_has_a_camel_case_name_of_its_own_and_a_text()
    {
        var all = Catalogue.Of(
            new AdhesivesPlugin(), new DocumentationPlugin(), new FastenersPlugin(), new ModularityPlugin(), new SparesPlugin(),
            new SupportPlugin(), new DisassemblyPlugin(), new TimePlugin(), new CostPlugin(), new SafetyPlugin(), new LocksPlugin());
        Assert.All(all.Criteria.SelectMany(criterion => criterion.Item.Info.Options), option =>
        {
            Assert.Matches("^[a-z][A-Za-z]+$", option.Name);
            Assert.NotEmpty(option.Text);
        });
        Assert.All(all.Criteria, criterion => Assert.Distinct(criterion.Item.Info.Options.Select(option => option.Name)));
    }
}
