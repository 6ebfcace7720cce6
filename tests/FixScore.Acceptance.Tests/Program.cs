using System.Diagnostics;
using System.Text;

namespace FixScore.Acceptance.Tests;

/// <summary>What a run of the program left: exit code and texts.</summary>
sealed record Ran(int Code, string Out, string Error);

/// <summary>The program, in a process of its own.</summary>
static class Fixscore
{
    public static string Record(string id) => Path.Combine(AppContext.BaseDirectory, "Records", id + ".json");

    public static Ran Run(params string[] arguments) => Run(null, [], arguments);

    public static Ran Run(byte[]? input, (string Name, string Value)[] environment, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", ["exec", Path.Combine(AppContext.BaseDirectory, "FixScore.Cli.dll"), .. arguments])
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8, StandardErrorEncoding = Encoding.UTF8, WorkingDirectory = Path.GetTempPath(),
        };
        foreach (var (name, value) in environment) start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        if (input is not null) process.StandardInput.BaseStream.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return new(process.ExitCode, output.Result.ReplaceLineEndings("\n"), error.Result.ReplaceLineEndings("\n"));
    }
}

/// <summary>A folder that goes away with the test.</summary>
sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("fixscore-acceptance-").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
