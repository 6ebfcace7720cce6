using System.Diagnostics;

namespace FixScore.Packages.Tests;

/// <summary>The linker of the machine, which native programs need beside the SDK.</summary>
static class Linker
{
    /// <summary>Why native programs cannot be made here; <c>null</c> where they can.</summary>
    public static string? Lacking { get; } =
        !OperatingSystem.IsLinux() ? "Native programs are tried on Linux only."
        : Links("clang") ?? Links("gcc") ?? false ? null
        : "No linker works here: apt-get install gcc libc6-dev.";

    // The SDK takes the first of the two that is there, whether it works or not.
    static bool? Links(string name)
    {
        var folder = Directory.CreateTempSubdirectory("fixscore-link-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "one.c"), "int main(void) { return 0; }");
            using var process = Process.Start(new ProcessStartInfo(name, ["one.c", "-o", "one"]) { WorkingDirectory = folder.FullName, RedirectStandardError = true })!;
            process.StandardError.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}

/// <summary>A test that makes a native program; skipped where none can be linked.</summary>
sealed class NativeFactAttribute : FactAttribute
{
    public NativeFactAttribute() => Skip = Linker.Lacking;
}
