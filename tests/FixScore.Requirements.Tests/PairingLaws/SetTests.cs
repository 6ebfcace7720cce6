using System.Reflection;
using FixScore.Requirements.PairingLaws;

namespace FixScore.Requirements.Tests.PairingLaws;

/// <summary>What the sets say of themselves, and that they answer any record.</summary>
public sealed class SetTests
{
    static readonly Catalogue Offered = Catalogue.Of(typeof(PairingLawsPlugin).Assembly.GetCustomAttribute<PluginAttribute>()!.Create());

    public static TheoryData<string> Sets => [.. Phone.Sets];

    static RequirementInfo Info(string set) => Offered.Requirements.Single(each => each.Item.Info.Id == set).Item.Info;

    [Fact]
    public void The_assembly_names_a_plugin_that_offers_all_three() => Assert.Equal(Phone.Sets, Offered.Requirements.Select(set => set.Item.Info.Id));

    [Theory]
    [MemberData(nameof(Sets))]
    public void The_caution_says_that_it_is_a_screening_aid(string set) =>
        Assert.StartsWith("A screening aid, not legal advice.", Info(set).Caution, StringComparison.Ordinal);

    // Enacted 28 May 2024 (read), signed 27 March 2024 (secondary), enacted 2025 (read).
    [Theory]
    [InlineData("us-co-hb24-1121", "enacted 28 May 2024 (read)", "after 1 January 2026 (read)")]
    [InlineData("us-or-sb-1596", "signed 27 March 2024 (secondary)", "after 1 January 2025 (secondary)")]
    [InlineData("us-wa-hb-1483", "enacted 2025 (read)", "after 1 January 2026 (read)")]
    public void The_source_says_of_each_date_how_well_it_is_known(string set, string made, string start)
    {
        Assert.Contains(made, Info(set).Source, StringComparison.Ordinal);
        Assert.Contains(start, Info(set).Source, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("us-co-hb24-1121", "C.R.S. 6-1-1502 and 6-1-1503; number of the paragraph not noted")]
    [InlineData("us-or-sb-1596", "Chapter 69, Oregon Laws 2024; section not read")]
    [InlineData("us-wa-hb-1483", "HB 1483, session law of 2025; number of the section not noted")]
    public void Each_finding_names_the_article_and_what_of_it_was_not_read(string set, string article) =>
        Assert.All(Phone.WithDisplay.Check(set), finding => Assert.Equal(article, finding.Article));

    [Theory]
    [MemberData(nameof(Sets))]
    public void Any_record_gets_one_finding_for_each_banned_effect_the_same_every_time(string set)
    {
        foreach (var record in SampleRecords.All.Concat(RecordGenerator.Many(60)))
        {
            ImmutableArray<Finding> Findings() => Offered.Requirements.Single(each => each.Item.Info.Id == set)
                .Check(new RecordCase(record with { Device = record.Device with { Released = new(2026, 6, 1) } }), new(2026, 7, 1));
            var findings = Findings();
            Assert.Equal(Phone.Rules, findings.Select(finding => finding.Rule));
            Assert.Equal(findings.Select(finding => (finding.Status, finding.Why.Text)), Findings().Select(finding => (finding.Status, finding.Why.Text)));
            Assert.All(findings, finding => Assert.DoesNotContain("{", finding.Why.Text, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_set_that_throws_is_named_with_its_plugin()
    {
        var set = new CatalogueBuilder().Add(new Broken()).Build().Requirements[0];
        var fault = Assert.Throws<RequirementFaultException>(() => set.Check(Phone.Bare.ToCase(), new(2026, 7, 1)));
        Assert.Equal(("test.broken", "FixScore.Requirements.Tests", typeof(InvalidOperationException)), (fault.Set, fault.Plugin, fault.InnerException!.GetType()));
    }

    sealed class Broken : IRequirementSet
    {
        public RequirementInfo Info { get; } = new("test.broken", 1, "Broken", "a test", "None.", []);

        public IEnumerable<Finding> Check(RequirementContext context) => throw new InvalidOperationException("no");
    }
}
