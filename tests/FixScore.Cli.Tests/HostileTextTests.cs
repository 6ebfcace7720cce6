using FixScore.Cli.Terminal;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>Text of records reaches the terminal as text: control functions are those of ECMA-48, directional formatting that of Unicode Annex 9.</summary>
public sealed class HostileTextTests
{
    const string Hostile = "[red]a[/] <script>alert(1)</script> \u001b[2J\u009b31m\u0007 \u202Egnp.exe\u2066 {0} %s\r\nb";

    [Theory]
    [InlineData("bench-balanced", "--explain")]
    [InlineData("bench-limiting", "--tolerant")]
    public void A_part_named_like_markup_or_a_control_sequence_stays_text(string profile, string more)
    {
        var ran = Fixscore.RunOn(Tablets.Named(Tablets.Slate2, Hostile), "score", "-", "--profile", profile, more);
        Assert.Equal(0, ran.Code);
        Assert.Contains("[red]a[/]", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(ran.Out, letter => letter != '\n' && char.IsControl(letter) || letter is '\u202E' or '\u2066');
    }

    [Theory]
    [InlineData]
    [InlineData("--classes", "--part", "battery")]
    public void Routes_of_a_hostile_record_stay_text(params string[] more)
    {
        var hostile = Tablets.Changed(Tablets.Named(Tablets.Slate2, Hostile), record =>
        {
            foreach (var entry in record["tools"]!.AsArray().Concat(record["consumables"]!.AsArray())) entry!["name"] = Hostile;
            foreach (var operation in record["operations"]!.AsArray()) operation!["caution"] = Hostile;
        });
        var ran = Fixscore.RunOn(hostile, ["route", "-", .. more]);
        Assert.Equal(0, ran.Code);
        Assert.Contains("[red]a[/]", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(ran.Out, letter => letter != '\n' && char.IsControl(letter) || letter is '\u202E' or '\u2066');
    }

    [Fact]
    public void Trials_of_a_hostile_record_stay_text()
    {
        var hostile = Tablets.Changed(Tablets.Plinth, record =>
        {
            foreach (var check in record["swaps"]!.AsArray().SelectMany(swap => swap!["checks"]!.AsArray())) check!["function"] = Hostile;
            foreach (var loss in record["locks"]!.AsArray().SelectMany(trial => trial!["losses"]!.AsArray())) loss!["function"] = Hostile;
            foreach (var swap in record["swaps"]!.AsArray()) swap!["software"] = Hostile;
        });
        var ran = Fixscore.RunOn(hostile, "swaps", "infer", "-");
        Assert.Contains("[red]a[/]", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain(ran.Out, letter => letter != '\n' && char.IsControl(letter) || letter is '\u202E' or '\u2066');
    }

    [Fact]
    public void On_a_terminal_only_our_own_styling_is_sent()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.RunOnTerminal(100, "score", folder.Write("r.json", Tablets.Named(Tablets.Slate2, Hostile)), "--profile", "bench-balanced");
        Assert.Equal(0, ran.Code);
        var sent = ran.Out.Split('\u001b')[1..].Select(rest => rest[..(rest.IndexOf('m', StringComparison.Ordinal) + 1)]).Distinct();
        // SGR 0, 1 and 2: reset, bold, faint (ECMA-48, 8.3.117).
        Assert.Empty(sent.Except(["[0m", "[1m", "[2m"]));
    }

    [Fact]
    public void Problems_of_a_hostile_record_are_told_without_its_control_characters()
    {
        var ran = Fixscore.RunOn(Tablets.Changed(Tablets.Slate2, record => record["parts"]![0]!["\u001b[2Jrole\u202E"] = "x"), "validate", "-");
        Assert.Equal(3, ran.Code);
        Assert.DoesNotContain(ran.Error, letter => letter != '\n' && char.IsControl(letter) || letter == '\u202E');
    }

    [Theory]
    [InlineData('x')]
    [InlineData('\u4E2D')]
    public void Names_of_10000_letters_leave_tables_readable(char letter)
    {
        var ran = Fixscore.RunOn(Tablets.Named(Tablets.Slate2, new string(letter, 10_000)), "score", "-", "--profile", "bench-balanced");
        Assert.Equal(0, ran.Code);
        Assert.True(ran.Out.Split('\n').Length < 400);
        Assert.DoesNotContain(ran.Out.Split('\n'), line => line.Length > 80);
    }

    [Theory]
    [InlineData]
    [InlineData("--part", "battery")]
    public void Names_of_10000_letters_leave_routes_readable(params string[] more)
    {
        var lines = Fixscore.RunOn(Tablets.Named(Tablets.Slate2, new string('x', 10_000)), ["route", "-", .. more]).Out.Split('\n');
        Assert.InRange(lines.Length, 10, 200);
        Assert.DoesNotContain(lines, line => line.Length > 80);
    }

    [Fact]
    public void File_names_are_untrusted_too() =>
        Assert.DoesNotContain('\u001b', Fixscore.Run("validate", "\u001b[2Jx.json").Error);

    [Theory]
    [InlineData("plain \u00E9\u4E2D\uD83D\uDD27", "plain \u00E9\u4E2D\uD83D\uDD27")]
    [InlineData("\u0000\u001b\u007f\u0085\u009b\t\n", "\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD")]
    [InlineData("\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069", "\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD\uFFFD")]
    [InlineData("\u2028\u2029", "\uFFFD\uFFFD")]
    public void What_steers_a_terminal_is_replaced_and_nothing_else(string text, string plain) => Assert.Equal(plain, Plain.Text(text));

    [Theory]
    [InlineData("display-assembly", "display-\nassembly")]
    [InlineData("a short-one", "a short-one")]
    [InlineData("unbreakablecompound", "unbreakablecompound")]
    [InlineData("one-two-three-four-five", "one-two-three-\nfour-five")]
    [InlineData("", "")]
    public void Compounds_go_on_below_after_a_hyphen(string text, string folded) => Assert.Equal(folded, Plain.Folded(text, 15));

    [Fact]
    public void Cutting_never_halves_a_letter()
    {
        Assert.Equal("ab...", Plain.Text("abcdefgh", 5));
        Assert.Equal("a...", Plain.Text("a\uD83D\uDD27cdefgh", 5));
    }
}
