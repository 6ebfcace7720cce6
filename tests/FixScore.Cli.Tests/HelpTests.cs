using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class HelpTests
{
    [Theory]
    [InlineData("")]
    [InlineData("demo")]
    [InlineData("validate")]
    [InlineData("score")]
    [InlineData("verify")]
    [InlineData("requirements")]
    [InlineData("route")]
    [InlineData("compare")]
    [InlineData("diff")]
    [InlineData("improve")]
    [InlineData("sheet")]
    [InlineData("swaps")]
    [InlineData("swaps infer")]
    [InlineData("swaps plan")]
    [InlineData("profiles")]
    [InlineData("criteria")]
    [InlineData("new")]
    [InlineData("new record")]
    [InlineData("new profile")]
    [InlineData("completion")]
    public void Each_command_says_how_it_is_called(string command)
    {
        var ran = Fixscore.Run([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"help {command}".TrimEnd().Replace(' ', '-'), ran.Out);
    }

    [Fact]
    public void No_line_of_help_is_wider_than_80() =>
        Assert.DoesNotContain(Fixscore.Run("--help").Out.Split('\n').Concat(Fixscore.Run("score", "--help").Out.Split('\n')), line => line.Length > 80);

    [Fact]
    public void Help_is_given_however_wrong_the_rest_is() => Assert.Equal(0, Fixscore.Run("score", "--help", "--nonsense").Code);

    [Fact]
    public void The_version_is_that_of_the_program() =>
        Assert.StartsWith(typeof(App).Assembly.GetName().Version!.ToString(3), Fixscore.Run("--version").Out, StringComparison.Ordinal);
}
