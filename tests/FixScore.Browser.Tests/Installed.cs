using System.Diagnostics;
using System.Reflection;

namespace FixScore.Browser.Tests;

/// <summary>Programs that a machine may have or lack, and the source tree.</summary>
static class Installed
{
    /// <summary>Where the source tree stands.</summary>
    public static string Repository { get; } = typeof(Installed).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == "Repository").Value!;

    /// <summary>The browser: named by the variable, else found by the names that distributions give it.</summary>
    public static string? Browser { get; } = Named("FIXSCORE_CHROMIUM") ?? OnPath("chromium") ?? OnPath("chromium-browser");

    /// <summary>The Nu Html Checker, named by the variable or put by <c>.ci/run</c> where the registry's client installs it.</summary>
    public static string? NuChecker { get; } = Named("FIXSCORE_VNU") ?? Existing(Path.Combine(Repository, "artifacts", "checker", "node_modules", "vnu-jar", "build", "dist", "vnu.jar"));

    /// <summary>Java, which the Nu Html Checker needs.</summary>
    public static string? Java { get; } = OnPath("java");

    /// <summary>HTML Tidy, version 5 or later.</summary>
    public static string? Tidy { get; } = OnPath("tidy");

    /// <summary>Runs a program to its end and gives all that it printed.</summary>
    public static async Task<string> Run(string program, params IEnumerable<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var texts = await Task.WhenAll(process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        return string.Concat(texts);
    }

    static string? Named(string variable) => Environment.GetEnvironmentVariable(variable) is { Length: > 0 } path ? path : null;

    static string? OnPath(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Select(folder => Existing(Path.Combine(folder, name)) ?? Existing(Path.Combine(folder, name + ".exe"))).FirstOrDefault(path => path is not null);

    static string? Existing(string path) => File.Exists(path) ? path : null;
}
