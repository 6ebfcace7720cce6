using System.Text;
using FixScore.Cli.Files;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

public sealed class OutputTests : IDisposable
{
    readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    static Ran Score(string to) => Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "bench-balanced", "--out", to);

    [Fact]
    public void A_folder_is_no_place_for_a_file()
    {
        var ran = Score(folder.Path);
        Assert.Equal(5, ran.Code);
        Assert.Equal($"{folder.Path} cannot be written: it is a folder.\n  Nothing was written in its place.\n", ran.Error);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told_and_not_made()
    {
        var ran = Score(folder.File("missing/s.json"));
        Assert.Equal(5, ran.Code);
        Assert.Contains("there is no such folder", ran.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Files);
    }

    [Fact]
    public void A_file_where_the_demo_wants_a_folder_is_told()
    {
        var ran = Fixscore.Run("demo", "--out", folder.Write("taken", "x"u8));
        Assert.Equal((5, ""), (ran.Code, ran.Out));
        Assert.Equal("x", File.ReadAllText(folder.File("taken")));
    }

    [Fact]
    public void A_file_is_replaced_as_a_whole_and_nothing_is_left_beside_it()
    {
        OutputFile.Write(folder.Write("s.json", new byte[1 << 16]), "short"u8.ToArray());
        Assert.Equal("short", File.ReadAllText(folder.File("s.json")));
        Assert.Equal(["s.json"], folder.Files);
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_leads_to_is_replaced()
    {
        File.CreateSymbolicLink(folder.File("link.json"), folder.Write("real.json", "old"u8));
        OutputFile.Write(folder.File("link.json"), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(folder.File("real.json")));
        Assert.NotNull(new FileInfo(folder.File("link.json")).LinkTarget);
    }

    [Fact]
    public void A_device_is_written_to_never_replaced()
    {
        if (OperatingSystem.IsWindows()) return;
        OutputFile.Write("/dev/null", Encoding.UTF8.GetBytes("gone"));
        Assert.Empty(File.ReadAllBytes("/dev/null"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    public void A_name_that_is_none_is_output_that_cannot_be_written(string name) => Assert.Throws<OutputException>(() => OutputFile.Write(name, [1]));
}
