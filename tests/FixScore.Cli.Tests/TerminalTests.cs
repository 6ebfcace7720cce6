using FixScore.Cli.Terminal;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class TerminalTests
{
    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(132)]
    public void Text_keeps_within_the_width(int width)
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.RunOnTerminal(width, "score", folder.Write("r.json", Tablets.Slate2), "--profile", "bench-balanced", "--explain");
        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain(Unstyled(ran.Out).Split('\n'), line => line.TrimEnd().Length > width);
    }

    [Fact]
    public void Redirected_text_has_no_styling_and_no_blanks_at_line_ends()
    {
        var text = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--explain").Out;
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain(text.Split('\n'), line => line.EndsWith(' '));
    }

    [Fact]
    public void A_terminal_gets_the_same_words_with_weights_instead_of_colours()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("r.json", Tablets.Slate2);
        static string Words(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(Words(Fixscore.Run("score", file, "--profile", "bench-balanced").Out), Words(Unstyled(Fixscore.RunOnTerminal(80, "score", file, "--profile", "bench-balanced").Out)));
    }

    [Theory]
    [InlineData("scroe", "score")]
    [InlineData("verfy", "verify")]
    [InlineData("profile", "profiles")]
    [InlineData("compare", null)]
    [InlineData("", null)]
    public void The_nearest_word_is_offered_when_it_is_near(string wrong, string? near) =>
        Assert.Equal(near, Suggestion.For(wrong, ["demo", "validate", "score", "verify", "profiles", "criteria", "new", "completion"]));

    static string Unstyled(string text) => System.Text.RegularExpressions.Regex.Replace(text, "\u001b\\[[0-9;]*m", "");
}
