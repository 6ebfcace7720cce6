using FixScore.Analysis.Assessors;

namespace FixScore.Analysis.Tests.Assessors;

public sealed class KappaTests
{
    // Textbook tables, from memory: 0.40; two tables with equal agreement, 0.1304 and 0.2593.
    [Theory]
    [InlineData(20, 5, 10, 15, 0.4)]
    [InlineData(45, 15, 25, 15, 3 / 23d)]
    [InlineData(25, 35, 5, 35, 7 / 27d)]
    public void Tables_of_two_words(int yesYes, int yesNo, int noYes, int noNo, double kappa) =>
        Support.Near(kappa, CohenKappa.Of([[yesYes, yesNo], [noYes, noNo]]).Kappa);

    [Fact]
    public void Words_are_counted_and_gaps_left_out()
    {
        var kappa = CohenKappa.Of(["yes", "no", null, "yes", "no"], ["yes", "no", "no", "no", "no"]);
        Assert.Equal(0.75, kappa.Observed);
        Support.Near(0.5, kappa.Expected);
        Support.Near(0.5, kappa.Kappa);
    }

    [Fact]
    public void One_word_throughout_says_nothing() => Assert.Null(CohenKappa.Of(["yes", "yes"], ["yes", "yes"]).Kappa);

    [Fact]
    public void What_cannot_be_compared_is_refused()
    {
        Assert.Throws<ArgumentException>(() => CohenKappa.Of([[1, 2]]));
        Assert.Throws<ArgumentException>(() => CohenKappa.Of([null], ["yes"]));
        Assert.Throws<ArgumentException>(() => CohenKappa.Of(["yes"], []));
    }
}
