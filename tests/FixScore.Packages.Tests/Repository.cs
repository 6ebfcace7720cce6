using System.Collections.Immutable;
using System.Diagnostics;
using System.Reflection;
using System.Security.Cryptography;

// Builds in the same copy would get in each other's way.
[assembly: CollectionBehavior(DisableTestParallelization = true)]

namespace FixScore.Packages.Tests;

/// <summary>The source tree that is tested, and commands run in it.</summary>
static class Repository
{
    public static string Root { get; } = BuiltWith("Repository");

    /// <summary>The folder with all packages that this project was built with.</summary>
    public static string Packages { get; } = BuiltWith("Packages");

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

    static string BuiltWith(string key) => typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == key).Value!;

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path)).ReplaceLineEndings("\n");

    public static string DigestOf(string file) => Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)));

    /// <summary>Runs a command to its end; fails with all it printed unless it exits with 0.</summary>
    public static string Run(string folder, string command, params string[] arguments) => Run(folder, [], command, arguments);

    /// <summary>The same with variables that the machine would else decide.</summary>
    public static string Run(string folder, ImmutableArray<(string, string)> variables, string command, params string[] arguments)
    {
        var (code, output, error) = Attempt(folder, variables, command, arguments);
        Assert.True(code == 0, $"{command} {string.Join(' ', arguments)} in {folder} exited with {code}\n{output}\n{error}");
        return output;
    }

    /// <summary>Runs a command to its end, whatever that is.</summary>
    public static (int Code, string Output, string Error) Attempt(string folder, ImmutableArray<(string, string)> variables, string command, params string[] arguments)
    {
        var start = new ProcessStartInfo(command, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        // What the test run sets for itself must not leak into the builds it starts.
        foreach (var name in start.Environment.Keys.Where(key => key.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || key == "VSTEST_HOST_DEBUG").ToArray()) start.Environment.Remove(name);
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        start.Environment["CI"] = "true";
        // One configuration for all commands, so that the tree is built once.
        start.Environment["Configuration"] = "Release";
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        foreach (var (name, value) in variables) start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.ReplaceLineEndings("\n"), error.Result.ReplaceLineEndings("\n"));
    }
}
