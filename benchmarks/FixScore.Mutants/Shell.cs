using System.Diagnostics;

namespace FixScore.Mutants;

/// <summary>Starts <c>dotnet</c> and waits for its end; what it prints goes to standard error.</summary>
static class Shell
{
    /// <exception cref="InvalidOperationException">It failed.</exception>
    public static void Run(string folder, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = folder, RedirectStandardOutput = true })!;
        process.OutputDataReceived += (_, said) => Console.Error.WriteLine(said.Data);
        process.BeginOutputReadLine();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException($"'dotnet {string.Join(' ', arguments)}' failed with {process.ExitCode}.");
    }
}
