using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class UsageTests
{
    [Theory]
    [InlineData("There is no command 'scor'. Did you mean 'score'?", "scor", "x.json")]
    [InlineData("There is no option '--jsn'. Did you mean '--json'?", "validate", "--jsn", "x.json")]
    [InlineData("There is no option '--profil'. Did you mean '--profile'?", "score", "x.json", "--profil", "p")]
    [InlineData("There is no option '--brief'.\n", "criteria", "--brief")]
    [InlineData("Option '--profile' is required.", "score", "x.json")]
    [InlineData("There is no culture 'xx-nowhere'.", "criteria", "--culture", "xx-nowhere")]
    [InlineData("'2026-02-30' is not a day. Write it as YYYY-MM-DD", "new", "record", "--date", "2026-02-30")]
    [InlineData("'stesp' is no word for --cost. Did you mean 'steps'?", "route", "x.json", "--cost", "stesp")]
    [InlineData("'0' is not a whole number above 0 that --effort can take.", "route", "x.json", "--effort", "0")]
    [InlineData("Option '--to' is required.", "improve", "x.json", "--profile", "p")]
    [InlineData("Standard input (-) can be read only once.", "validate", "-", "-")]
    public void A_slip_says_what_was_probably_meant(string says, params string[] arguments)
    {
        var ran = Fixscore.Run(arguments);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_command_at_all_shows_the_commands()
    {
        var ran = Fixscore.Run();
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Equal(Fixscore.Run("--help").Out, ran.Error);
    }

    [Fact]
    public void What_stands_after_two_dashes_is_a_file_however_it_is_named()
    {
        var ran = Fixscore.Run("validate", "--", "--jsn");
        Assert.Equal(3, ran.Code);
        Assert.StartsWith("--jsn input-unreadable There is no such file.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_with_an_at_sign_is_a_file_not_a_list_of_arguments()
    {
        var ran = Fixscore.Run("validate", "@arguments");
        Assert.Equal(3, ran.Code);
        Assert.StartsWith("@arguments input-unreadable There is no such file.", ran.Error, StringComparison.Ordinal);
    }
}
