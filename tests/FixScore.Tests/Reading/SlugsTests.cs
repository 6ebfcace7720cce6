using FixScore.Reading;

namespace FixScore.Tests.Reading;

public sealed class SlugsTests
{
    [Theory]
    [InlineData("a")]
    [InlineData("0")]
    [InlineData("a-b.c-1")]
    [InlineData("acme.hinge-cycles")]
    public void These_are_slugs(string text) => Assert.True(Slugs.IsSlug(text));

    [Theory]
    [InlineData("")]
    [InlineData("-a")]
    [InlineData("a-")]
    [InlineData("a--b")]
    [InlineData("a.-b")]
    [InlineData("a\n")]
    [InlineData("\na")]
    [InlineData("A")]
    [InlineData("ä")]
    [InlineData("a b")]
    [InlineData("a_b")]
    [InlineData("１")]
    [InlineData("ı")]
    public void These_are_none(string text) => Assert.False(Slugs.IsSlug(text));
}
