using FixScore.Records;

namespace FixScore.Pairing.Tests;

public sealed class PartFunctionTests
{
    [Fact]
    public void Every_function_has_a_name_a_title_and_one_line_on_how() => Assert.All(PartFunctions.All, function =>
    {
        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", function.Function);
        Assert.NotEmpty(function.Title);
        Assert.InRange(function.How.Length, 10, 140);
        Assert.DoesNotContain('\n', function.How);
    });

    [Theory]
    [InlineData("display-assembly", "touch")]
    [InlineData("battery", "battery-health")]
    [InlineData("rear-camera", "rear-photo")]
    [InlineData("fingerprint-sensor", "fingerprint")]
    [InlineData("charging-coil", "wireless-charging")]
    [InlineData("hinge", "fold-angle")]
    public void A_part_is_known_by_what_it_does(string role, string function) => Assert.Contains(PartFunctions.Of(role), each => each.Function == function && each.IsEssential);

    [Fact]
    public void A_role_that_the_list_does_not_know_has_none() => Assert.Empty(PartFunctions.Of("foot-strip"));

    [Fact]
    public void The_list_says_where_it_comes_from() => Assert.StartsWith("Common practice, no source", PartFunctions.About, StringComparison.Ordinal);

    [Fact]
    public void A_trial_that_is_silent_about_what_its_part_does_is_warned_of_once()
    {
        var problem = Assert.Single(Problems(Bench.Swap("t", "battery=b", Bench.Works("touch"))));
        Assert.Equal((FunctionCoverageCheck.Untested, Severity.Warning, "/swaps/0"), (problem.Code, problem.Severity, problem.At.Text));
        Assert.Equal("Trial t does not say how functions of its foreign parts behaved: charging, battery-health.", problem.Message);
    }

    [Fact]
    public void Naming_a_function_as_untested_is_enough() =>
        Assert.Empty(Problems(Bench.Swap("t", "battery=b", Bench.Works("charging"), Bench.Untested("battery-health"))));

    [Fact]
    public void Controls_moved_boards_and_unknown_roles_are_not_asked() => Assert.Empty(Problems(
        Bench.Swap("c", "", Bench.Works("touch")), Bench.Swap("m", "board=b", Bench.Works("touch")), Bench.Swap("k", "camera=b", Bench.Works("touch"))));

    static Problem[] Problems(params SwapTrial[] swaps) => [.. new FunctionCoverageCheck().Check(new RecordCase(Bench.Phone(swaps)))];
}
