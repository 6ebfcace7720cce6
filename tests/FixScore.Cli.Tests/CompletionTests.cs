using System.Globalization;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class CompletionTests
{
    static string[] Suggested(string line) =>
        Fixscore.Run($"[suggest:{line.Length.ToString(CultureInfo.InvariantCulture)}]", line).Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    [Theory]
    [InlineData("bash", "complete -o default -F _fixscore fixscore")]
    [InlineData("zsh", "compdef _fixscore fixscore")]
    [InlineData("fish", "complete -c fixscore")]
    [InlineData("pwsh", "Register-ArgumentCompleter -Native -CommandName fixscore")]
    public void Each_shell_gets_a_script_that_asks_the_program(string shell, string registers)
    {
        var ran = Fixscore.Run("completion", shell);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains(registers, ran.Out, StringComparison.Ordinal);
        Assert.Contains("[suggest:", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_shell_is_a_usage_error() => Assert.Equal(2, Fixscore.Run("completion", "tcsh").Code);

    [Fact]
    public void Commands_are_suggested() => Assert.Equal(["score"], Suggested("fixscore sc"));

    [Fact]
    public void Commands_of_a_group_are_suggested() => Assert.Equal(["infer"], Suggested("fixscore swaps inf"));

    [Fact]
    public void Options_are_suggested() => Assert.Equal(["--explain"], Suggested("fixscore score --ex"));

    [Theory]
    [InlineData("--cost se", "seconds")]
    [InlineData("--first-tool ", "change", "no-change")]
    [InlineData("--part bat", "battery")]
    public void Words_of_options_are_suggested(string typed, params string[] words) => Assert.Equal(words, Suggested($"fixscore route x.json {typed}"));

    [Fact]
    public void Built_in_profiles_are_suggested() =>
        Assert.Equal(["bench-balanced", "bench-limiting"], Suggested("fixscore score x.json --profile bench"));

    [Fact]
    public void Built_in_sets_of_requirements_are_suggested() =>
        Assert.Equal(["us-co-hb24-1121", "us-or-sb-1596", "us-wa-hb-1483"], Suggested("fixscore requirements x.json --set us-"));
}
