using System.Text;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>70 is EX_SOFTWARE of BSD's sysexits.h; 130 is what shells report for SIGINT (128 + 2). The other codes are this program's own.</summary>
public sealed class FailureTests
{
    [Fact]
    public void A_criterion_that_throws_ends_the_run_with_4_and_is_named()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", folder.Write("p.json", FailingPlugin.Profile), "--trust-once", "--plugin", FailingPlugin.File);
        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.StartsWith("The criterion test.throws of FixScore.Cli.Tests failed at total/one (criterion-threw", ran.Error, StringComparison.Ordinal);
        Assert.Contains("--tolerant", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tolerant_run_takes_it_as_the_whole_scale_and_says_so()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", folder.Write("p.json", FailingPlugin.Profile), "--trust-once", "--plugin", FailingPlugin.File, "--tolerant");
        Assert.Equal(0, ran.Code);
        Assert.Contains(", tolerant\n", ran.Out, StringComparison.Ordinal);
        Assert.Contains("! The criterion at total/one failed (criterion-threw); it counts as the whole\n  scale.", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_check_that_throws_is_the_plugins_fault()
    {
        var ran = Fixscore.RunOn(Tablets.Changed(Tablets.Slate2, record => record["id"] = FailingPlugin.Dreaded), "validate", "-", "--trust-once", "--plugin", FailingPlugin.File);
        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.StartsWith("A record check of a plugin failed on <standard input> (InvalidOperationException).", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plugin_file_that_cannot_be_used_exits_with_4()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(4, Fixscore.Run("criteria", "--plugin", folder.File("none.dll")).Code);
        Assert.Equal(4, Fixscore.Run("criteria", "--plugin", folder.Write("text.dll", "no assembly"u8)).Code);
        Assert.Equal(4, Fixscore.Run("criteria", "--plugin", typeof(FactAttribute).Assembly.Location).Code);
    }

    [Fact]
    public void An_interrupted_run_exits_with_130_and_says_nothing()
    {
        var ran = Fixscore.RunWith(new MemoryStream(Tablets.Slate2), new CancellationToken(canceled: true), "score", "-", "--profile", "bench-balanced");
        Assert.Equal((130, "", ""), (ran.Code, ran.Out, ran.Error));
    }

    [Fact]
    public void A_bug_is_one_plain_sentence()
    {
        var ran = Fixscore.RunWith(new BrokenStream(), default, "validate", "-");
        Assert.Equal((70, ""), (ran.Code, ran.Out));
        Assert.Equal("This is a bug in fixscore (DivideByZeroException).\n  Set FIXSCORE_DEBUG=1 and run it again to see where.\n", ran.Error);
    }

    [Fact]
    public void Input_that_breaks_off_is_unreadable()
    {
        var ran = Fixscore.RunWith(new BrokenStream(new IOException("gone")), default, "score", "-", "--profile", "bench-balanced");
        Assert.Equal(3, ran.Code);
        Assert.Equal("- input-unreadable cannot be read\n  Check the name and your rights.\n", ran.Error);
    }

    [Fact]
    public void Deeply_nested_input_is_refused_not_followed()
    {
        var ran = Fixscore.RunOn(Encoding.UTF8.GetBytes(new string('[', 100_000)), "validate", "-");
        Assert.Equal(3, ran.Code);
    }

    sealed class BrokenStream(Exception? failure = null) : MemoryStream
    {
        public override bool CanSeek => false;

        public override int Read(byte[] buffer, int offset, int count) => throw failure ?? new DivideByZeroException();
    }
}
