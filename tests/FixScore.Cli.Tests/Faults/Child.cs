using System.Diagnostics;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests.Faults;

/// <summary>The tool as a process of its own, which can be killed.</summary>
static class Child
{
    public static string Tool { get; } = Path.Combine(AppContext.BaseDirectory, "FixScore.Cli.dll");

    public static Process Start(params string[] arguments) => Started("dotnet", ["exec", Tool, .. arguments]);

    /// <summary>Runs a line of a POSIX shell in which <c>fixscore</c> is the tool.</summary>
    public static Ran Shell(string line)
    {
        using var shell = Started("bash", ["-c", $"set -o pipefail; fixscore() {{ dotnet exec '{Tool}' \"$@\"; }}; {line}"]);
        var error = shell.StandardError.ReadToEndAsync();
        var output = shell.StandardOutput.ReadToEnd();
        shell.WaitForExit();
        return new(shell.ExitCode, output, error.Result);
    }

    static Process Started(string program, string[] arguments)
    {
        var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        process.StandardInput.Close();
        return process;
    }
}

/// <summary>A test that needs what only POSIX systems have: pipes with names, /dev/full, bash.</summary>
sealed class PosixFactAttribute : FactAttribute
{
    public PosixFactAttribute()
    {
        if (OperatingSystem.IsWindows()) Skip = "Needs a POSIX system.";
    }
}
