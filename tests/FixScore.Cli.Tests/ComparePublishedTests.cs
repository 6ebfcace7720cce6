using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using FixScore.Analysis.Tests;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>The Technology Achievement Index through the command line: ranks of Tables 23 and 38 of the Handbook on Constructing Composite Indicators, OECD and JRC 2008.</summary>
public sealed class ComparePublishedTests
{
    // Saisana, Saltelli and Tarantola (2005), J. R. Statist. Soc. A 168, Table 1; telephones and electricity as decadic logarithms.
    const string Goalposts = "#worst,0,0,0,0,0,1.342422680822206,0.8,0.1\n#best,994,272.6,232.4,80.8,2.954724790979063,3.843170465369047,12,27.4\n";

    [Fact]
    public void All_23_published_ranks_of_the_linear_rule_come_out_of_goalposts() =>
        Assert.Equal(Technology.Countries.Select(country => (country.Name, country.LinearRank)), Ranks(Goalposts, "--rule", "arithmetic"));

    [Fact]
    public void All_23_published_ranks_of_the_geometric_rule_come_out_of_the_values_as_they_are() =>
        Assert.Equal(Technology.Countries.Select(country => (country.Name, country.GeometricRank)), Ranks("", "--rule", "geometric", "--scale", "none"));

    static IEnumerable<(string, int)> Ranks(string posts, params string[] more)
    {
        var rows = Technology.Countries.Select(country => $"{country.Name},{string.Join(',', country.Values.Select(value => value.ToString(CultureInfo.InvariantCulture)))}\n");
        var text = $"country,{string.Join(',', Technology.Indicators)}\n{posts}{string.Concat(rows)}";
        var ran = Fixscore.RunOn(Encoding.UTF8.GetBytes(text), ["compare", "--table", "-", "--draws", "100", "--json", .. more]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var root = JsonNode.Parse(ran.Out)!;
        return root["devices"]!.AsArray().Zip(root["ranks"]!.AsArray(), (name, row) => ((string)name!, (int)row![0]!["best"]!));
    }
}
