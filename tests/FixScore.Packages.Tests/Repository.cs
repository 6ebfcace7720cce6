using System.Diagnostics;
using System.Reflection;

// Builds in the same copy would get in each other's way.
[assembly: CollectionBehavior(DisableTestParallelization = true)]

namespace FixScore.Packages.Tests;

/// <summary>The source tree that is tested, and commands run in it.</summary>
static class Repository
{
    public static string Root { get; } = typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == "Repository").Value!;

    /// <summary>A copy of the tree, without what builds left: builds made here never meet those of the test run.</summary>
    public static string Copy => CopyOnce.Value;

    static readonly Lazy<string> CopyOnce = new(() =>
    {
        var to = Directory.CreateTempSubdirectory("fixscore-copy-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(to, recursive: true);
        CopyFolder(Root, to);
        return to;
    });

    public static void CopyFolder(string from, string to)
    {
        foreach (var file in Directory.GetFiles(from)) File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var folder in Directory.GetDirectories(from).Where(each => Path.GetFileName(each) is not ("bin" or "obj" or ".git" or "artifacts" or "TestResults")))
            CopyFolder(folder, Directory.CreateDirectory(Path.Combine(to, Path.GetFileName(folder))).FullName);
    }

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path)).ReplaceLineEndings("\n");

    /// <summary>Runs a command to its end; fails with all it printed unless it exits with 0.</summary>
    public static string Run(string folder, string command, params string[] arguments) => Run(folder, null, command, arguments);

    /// <summary>The same with a package cache of its own, which a variable of the machine would else decide.</summary>
    public static string Run(string folder, DirectoryInfo? cache, string command, params string[] arguments)
    {
        var start = new ProcessStartInfo(command, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // What the test run sets for itself must not leak into the builds it starts.
        foreach (var name in start.Environment.Keys.Where(key => key.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || key == "VSTEST_HOST_DEBUG").ToArray()) start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        start.Environment["CI"] = "true";
        if (cache is not null) start.Environment["NUGET_PACKAGES"] = cache.FullName;
        // One configuration for all commands, so that the tree is built once.
        start.Environment["Configuration"] = "Release";
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"{command} {string.Join(' ', arguments)} in {folder} exited with {process.ExitCode}\n{output}\n{error.Result}");
        return output.ReplaceLineEndings("\n");
    }
}
