using System.Diagnostics;
using System.Text;
using FixScore.Cli.Files;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests.Faults;

/// <summary>Whoever is killed, and whoever else writes: a file is the old one or the new one, whole.</summary>
public sealed class Interrupted_writing_tests : IDisposable
{
    const int Lines = 3000;
    static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [PosixFact]
    public void A_run_that_is_killed_while_it_writes_leaves_the_old_file()
    {
        var input = folder.Write("in.ndjson", OneLine(Torch.Record));
        var target = folder.Write("out.ndjson", "old\n"u8);
        foreach (var size in (long[])[0, 100_000, 1_000_000])
        {
            using var child = Child.Start("score", input, "--ndjson", "--profile", "bench-balanced", "--out", target);
            var reached = WaitForPart(child, size);
            child.Kill();
            child.WaitForExit();
            Assert.True(reached, "It ended before it was killed.");
            Assert.Equal("old\n", File.ReadAllText(target));
        }
        Assert.Equal(3, folder.Files.Count(name => name.StartsWith("fixscore-", StringComparison.Ordinal) && name.EndsWith(".part", StringComparison.Ordinal)));
        Assert.Equal(5, folder.Files.Length);
    }

    [Fact]
    public void Of_many_that_write_the_same_file_at_once_one_is_left_whole_and_no_reader_sees_a_part()
    {
        var target = folder.Write("out", Texts[0]);
        Parallel.For(0, 120, i =>
        {
            if (i % 3 < 2) OutputFile.Write(target, Texts[i % 3]);
            else AssertWhole(Shared(target));
        });
        AssertWhole(File.ReadAllBytes(target));
        Assert.Equal(["out"], folder.Files);
    }

    [PosixFact]
    public void Of_two_processes_that_write_the_same_file_at_once_one_is_left_whole()
    {
        var (input, target) = (folder.Write("torch.json", Torch.Record), folder.File("out.json"));
        string[] profiles = ["bench-balanced", "bench-limiting"];
        var expected = profiles.Select(profile => Fixscore.RunOn(Torch.Record, "score", "-", "--profile", profile, "--json").Out).ToArray();
        var children = profiles.Select(profile => Child.Start("score", input, "--profile", profile, "--out", target)).ToArray();
        foreach (var child in children)
        {
            child.WaitForExit();
            Assert.Equal(0, child.ExitCode);
            child.Dispose();
        }
        Assert.Contains(File.ReadAllText(target), expected);
        Assert.Equal(["out.json", "torch.json"], folder.Files);
    }

    [Fact]
    public void Writing_that_fails_half_way_leaves_the_old_file_and_nothing_beside_it()
    {
        var target = folder.Write("out", "old"u8);
        Assert.Throws<OutputException>(() => OutputFile.Write(target, stream =>
        {
            stream.Write(Texts[0]);
            throw new IOException("No space left on device");
        }));
        Assert.Equal("old", File.ReadAllText(target));
        Assert.Equal(["out"], folder.Files);
    }

    static readonly byte[][] Texts = [Filled('a'), Filled('b')];

    static byte[] Filled(char letter) => Encoding.ASCII.GetBytes(new string(letter, 300_000));

    static void AssertWhole(byte[] text) => Assert.True(text.AsSpan().SequenceEqual(Texts[0]) || text.AsSpan().SequenceEqual(Texts[1]), $"{text.Length} bytes are neither text.");

    static byte[] Shared(string path)
    {
        using var file = File.Open(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    static byte[] OneLine(byte[] record) =>
        Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(System.Text.Json.Nodes.JsonNode.Parse(record)!.ToJsonString() + "\n", Lines)));

    // The parts of runs before stay: the newest counts.
    bool WaitForPart(Process child, long size)
    {
        var watch = Stopwatch.StartNew();
        while (watch.Elapsed < Patience && !child.HasExited)
        {
            var parts = new DirectoryInfo(folder.Path).GetFiles("*.part");
            if (parts.Length > seen && parts.MaxBy(part => part.LastWriteTimeUtc)!.Length >= size)
            {
                seen = parts.Length;
                return true;
            }
            Thread.Sleep(2);
        }
        return false;
    }

    int seen;
}
