using FixScore.Checks;

namespace FixScore.Tests.Checks;

public sealed class CyclesTests
{
    [Theory]
    [InlineData("a>b b>c c", "")]
    [InlineData("a>a", "a")]
    [InlineData("a>b b>a", "a b")]
    [InlineData("a>b b>c c>b", "b c")]
    [InlineData("c>b b>c a", "c b")]
    [InlineData("a>c b>a c>b", "a c b")]
    [InlineData("a>b,c b>a c>a", "a b")]
    [InlineData("a>b b>a c>d d>c", "a b|c d")]
    [InlineData("x>a a>y y>a b>b", "a y|b")]
    [InlineData("a>nothing b", "")]
    public void Each_circle_is_told_once_and_begins_with_what_stands_first(string next, string cycles)
    {
        var steps = next.Split(' ').Select(step => step.Split('>')).Select(step => KeyValuePair.Create(step[0], step.Length == 1 ? [] : step[1].Split(',')));
        Assert.Equal(cycles, string.Join("|", Cycles.Of(steps).Select(cycle => string.Join(" ", cycle))));
    }
}
