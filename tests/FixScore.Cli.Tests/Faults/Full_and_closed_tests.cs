using System.Diagnostics;
using FixScore.Cli.Files;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests.Faults;

/// <summary>Disks that are full, readers that leave, folders that are none. 5 and 70 are this program's exit codes; 0 for a reader that left is common practice, no source.</summary>
public sealed class Full_and_closed_tests : IDisposable
{
    readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [PosixFact]
    public void A_full_device_is_told()
    {
        if (!File.Exists("/dev/full")) return;
        var ran = Fixscore.RunOn(Torch.Record, "score", "-", "--profile", "bench-balanced", "--out", "/dev/full");
        Assert.Equal(5, ran.Code);
        Assert.StartsWith("/dev/full cannot be written: ", ran.Error, StringComparison.Ordinal);
        Assert.True(File.Exists("/dev/full"));
    }

    [PosixFact]
    public void A_full_standard_output_is_told()
    {
        if (!File.Exists("/dev/full")) return;
        Assert.Equal(5, Child.Shell("fixscore criteria > /dev/full").Code);
    }

    [SmallDiskFact]
    public void A_full_disk_keeps_the_old_file_and_no_part_of_the_new_one()
    {
        using var disk = new SmallDisk();
        var target = Path.Combine(disk.Path, "s.json");
        File.WriteAllText(target, "old");
        var ran = Fixscore.RunOn(Tablets.Slate2, "score", "-", "--profile", "eu-2023-1669", "--out", target);
        Assert.Equal(5, ran.Code);
        Assert.Contains("Nothing was written in its place.", ran.Error, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(target));
        Assert.Equal([target], Directory.GetFiles(disk.Path));
    }

    [PosixFact]
    public void A_reader_that_leaves_after_a_line_ends_the_run_quietly()
    {
        var ran = Child.Shell("fixscore criteria --json | head -1");
        Assert.Equal((0, "{\n", ""), (ran.Code, ran.Out, ran.Error));
    }

    [PosixFact]
    public void A_closed_standard_output_is_told_where_anybody_listens()
    {
        Assert.Contains("Output cannot be written", Child.Shell("fixscore criteria >&-").Error, StringComparison.Ordinal);
        var ran = Child.Shell("fixscore criteria >&- 2>&-");
        Assert.Equal(5, ran.Code);
    }

    [PosixFact]
    public void A_closed_standard_input_is_empty()
    {
        var ran = Child.Shell("fixscore validate - <&-");
        Assert.Equal(3, ran.Code);
        Assert.Contains("json.empty", ran.Error, StringComparison.Ordinal);
    }

    [SmallDiskFact]
    public void A_read_only_disk_keeps_the_old_file()
    {
        using var disk = new SmallDisk();
        var target = Path.Combine(disk.Path, "s.json");
        File.WriteAllText(target, "old");
        disk.MakeReadOnly();
        var ran = Fixscore.RunOn(Torch.Record, "score", "-", "--profile", "bench-balanced", "--out", target);
        Assert.Equal(5, ran.Code);
        Assert.Contains("cannot be written", ran.Error, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(target));
        Assert.Equal([target], Directory.GetFiles(disk.Path));
    }

    [SmallDiskFact]
    public void A_folder_on_a_read_only_disk_is_not_made()
    {
        using var disk = new SmallDisk();
        disk.MakeReadOnly();
        var ran = Fixscore.Run("demo", "--out", Path.Combine(disk.Path, "demo"));
        Assert.Equal(5, ran.Code);
        Assert.Contains("cannot be written", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_below_a_file_is_no_folder()
    {
        var path = Path.Combine(folder.Write("file", "x"u8), "s.json");
        var failure = Assert.Throws<OutputException>(() => OutputFile.Write(path, [1]));
        Assert.StartsWith($"{path} cannot be written: ", failure.Message, StringComparison.Ordinal);
        Assert.Throws<OutputException>(() => OutputFile.MakeFolder(path));
        Assert.Equal(["file"], folder.Files);
    }

    [PosixFact]
    public void A_pipe_with_a_name_is_written_to_and_stays()
    {
        var pipe = folder.File("pipe");
        Process.Start("mkfifo", [pipe])!.WaitForExit();
        var reader = Task.Run(() => File.ReadAllText(pipe));
        OutputFile.Write(pipe, "through"u8.ToArray());
        Assert.Equal("through", reader.Result);
        Assert.Equal(["pipe"], folder.Files);
        using var again = File.Open(pipe, FileMode.Open, FileAccess.ReadWrite);
        Assert.False(again.CanSeek);
    }
}
