using System.Diagnostics;
using System.Reflection;

namespace FixScore.Packages.Tests;

/// <summary>The source tree that is tested, and commands run in it.</summary>
static class Repository
{
    public static string Root { get; } = typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == "Repository").Value!;

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path)).ReplaceLineEndings("\n");

    /// <summary>Runs a command to its end; fails with all it printed unless it exits with 0.</summary>
    public static string Run(string folder, string command, params string[] arguments)
    {
        var start = new ProcessStartInfo(command, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // What the test run sets for itself must not leak into the builds it starts.
        foreach (var name in start.Environment.Keys.Where(key => key.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || key == "VSTEST_HOST_DEBUG").ToArray()) start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{command} {string.Join(' ', arguments)} in {folder} exited with {process.ExitCode}\n{output}\n{error.Result}");
        return output.ReplaceLineEndings("\n");
    }
}
