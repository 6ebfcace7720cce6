using FixScore.Cli.Files;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests.Faults;

/// <summary>Outputs at odd places: links of all kinds, devices behind links, the input itself.</summary>
public sealed class Links_and_places_tests : IDisposable
{
    readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [PosixFact]
    public void A_device_behind_a_link_is_written_to_and_never_replaced()
    {
        File.CreateSymbolicLink(folder.File("link"), "/dev/null");
        OutputFile.Write(folder.File("link"), [1, 2, 3]);
        Assert.Equal("/dev/null", new FileInfo(folder.File("link")).LinkTarget);
        Assert.Empty(File.ReadAllBytes("/dev/null"));
    }

    [PosixFact]
    public void A_device_in_a_folder_behind_a_link_is_found_to_be_one()
    {
        Directory.CreateSymbolicLink(folder.File("devices"), "/dev");
        Assert.Equal("/dev/null", OutputPlace.Behind(folder.File("devices/null")));
    }

    [PosixFact]
    public void A_file_in_memory_is_replaced_like_any_other_although_it_is_among_the_devices()
    {
        if (!Directory.Exists("/dev/shm")) return;
        var path = $"/dev/shm/fixscore-test-{Path.GetRandomFileName()}";
        File.WriteAllText(path, "old");
        try
        {
            Assert.Throws<OutputException>(() => OutputFile.Write(path, stream => throw new IOException("full")));
            Assert.Equal("old", File.ReadAllText(path));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_chain_of_links_is_followed_to_its_end()
    {
        File.CreateSymbolicLink(folder.File("second"), folder.Write("real", "old"u8));
        File.CreateSymbolicLink(folder.File("first"), folder.File("second"));
        OutputFile.Write(folder.File("first"), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(folder.File("real")));
        Assert.All((string[])["first", "second"], name => Assert.NotNull(new FileInfo(folder.File(name)).LinkTarget));
    }

    [Fact]
    public void A_link_that_leads_nowhere_yet_makes_the_file_it_names()
    {
        File.CreateSymbolicLink(folder.File("link"), folder.File("later"));
        OutputFile.Write(folder.File("link"), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(folder.File("later")));
    }

    [Fact]
    public void A_link_that_leads_to_itself_is_told()
    {
        File.CreateSymbolicLink(folder.File("link"), folder.File("link"));
        Assert.Throws<OutputException>(() => OutputFile.Write(folder.File("link"), [1]));
        Assert.Equal(["link"], folder.Files);
    }

    [Fact]
    public void The_input_can_be_the_output()
    {
        var path = folder.Write("r.json", Torch.Record);
        Assert.Equal(0, Fixscore.Run("score", path, "--profile", "bench-balanced", "--out", path).Code);
        Assert.Equal(Fixscore.RunOn(Torch.Record, "score", "-", "--profile", "bench-balanced", "--json").Out, File.ReadAllText(path));
    }

    [Theory]
    [InlineData("with a blank.json")]
    [InlineData("Stückliste-\u7535\u6c60.json")]
    [InlineData("line\nbreak.json")]
    [InlineData("-dash.json")]
    public void Any_name_can_be_written_and_read(string name)
    {
        if (OperatingSystem.IsWindows() && name.Contains('\n', StringComparison.Ordinal)) return;
        var ran = Fixscore.RunOn(Torch.Record, "score", "-", "--profile", "bench-balanced", "--out", folder.File(name));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Equal([name], folder.Files);
        Assert.Equal(0, Fixscore.RunOn(Torch.Record, "verify", folder.File(name), "--record", "-").Code);
    }

    [Fact]
    public void The_longest_name_that_a_folder_takes_can_be_written()
    {
        var name = new string('n', 255);
        OutputFile.Write(folder.File(name), [1]);
        Assert.Equal([name], folder.Files);
    }
}
