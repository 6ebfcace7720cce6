using System.Diagnostics;
using FixScore.Cli.Files;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests.Faults;

/// <summary>Inputs that are no plain files, or do not stay as they were.</summary>
public sealed class Odd_inputs_tests : IDisposable
{
    readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    static void AssertRefused(Ran ran, string code)
    {
        Assert.Equal(3, ran.Code);
        Assert.Contains(code, ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("validate")]
    [InlineData("route")]
    [InlineData("sheet")]
    [InlineData("requirements")]
    public void A_folder_is_no_input(string command) => AssertRefused(Fixscore.Run(command, folder.Path), "input-is-a-folder");

    [Theory]
    [InlineData("missing.json")]
    [InlineData("missing/r.json")]
    public void A_file_that_is_not_there_is_told(string name) => AssertRefused(Fixscore.Run("validate", folder.File(name)), "input-unreadable");

    [Fact]
    public void A_path_below_a_file_is_told() => AssertRefused(Fixscore.Run("validate", Path.Combine(folder.Write("file", "x"u8), "r.json")), "input-unreadable");

    [PosixFact]
    public void An_empty_device_is_an_empty_text() => AssertRefused(Fixscore.Run("validate", "/dev/null"), "json.empty");

    [PosixFact]
    public void A_device_that_never_ends_is_too_large() => AssertRefused(Fixscore.Run("validate", "/dev/zero"), "json.too-large");

    [PosixFact]
    public void A_pipe_with_a_name_is_read_to_its_end()
    {
        var pipe = folder.File("pipe");
        Process.Start("mkfifo", [pipe])!.WaitForExit();
        var writer = Task.Run(() => File.WriteAllBytes(pipe, Torch.Record));
        Assert.Equal(0, Fixscore.Run("validate", pipe).Code);
        writer.Wait();
    }

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    public void A_file_that_is_cut_while_it_is_read_ends_where_it_was_cut(int left)
    {
        using var shrinking = new ChangingStream(Torch.Record[..left], said: Torch.Record.Length);
        Assert.Equal(left, Input.Read("-", shrinking).Bytes.Length);
        using var again = new ChangingStream(Torch.Record[..left], said: Torch.Record.Length);
        AssertRefused(Fixscore.RunWith(again, default, "validate", "-"), left == 0 ? "json.empty" : "json.syntax");
    }

    [Fact]
    public void A_file_that_grows_while_it_is_read_is_read_to_its_new_end()
    {
        using var growing = new ChangingStream(Torch.Record, said: 10);
        Assert.Equal(0, Fixscore.RunWith(growing, default, "validate", "-").Code);
    }

    [Fact]
    public void A_file_that_cannot_be_read_any_further_is_told()
    {
        using var broken = new ChangingStream(Torch.Record, said: 100, breaks: true);
        AssertRefused(Fixscore.RunWith(broken, default, "validate", "-"), "input-unreadable");
    }

    /// <summary>A stream whose length is not what it said at first.</summary>
    sealed class ChangingStream(byte[] bytes, long said, bool breaks = false) : MemoryStream(bytes)
    {
        public override long Length => said;

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = base.Read(buffer, offset, Math.Min(count, 50));
            return read > 0 && Position > 100 && breaks ? throw new IOException("Input/output error") : read;
        }
    }
}
