using System.Diagnostics;

namespace FixScore.Cli.Tests.Faults;

/// <summary>A file system of 16 KiB in memory.</summary>
sealed class SmallDisk : IDisposable
{
    public SmallDisk()
    {
        if (!Mounted()) throw new InvalidOperationException("It cannot be mounted.");
    }

    public string Path { get; } = Directory.CreateTempSubdirectory("fixscore-disk-").FullName;

    /// <summary>Whether whoever runs the tests may mount one.</summary>
    public static bool IsPossible
    {
        get
        {
            if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess) return false;
            try
            {
                using var disk = new SmallDisk();
                return true;
            }
            catch (Exception failure) when (failure is InvalidOperationException or System.ComponentModel.Win32Exception)
            {
                return false;
            }
        }
    }

    public void MakeReadOnly()
    {
        if (!Run("mount", "-o", "remount,ro", Path)) throw new InvalidOperationException("It cannot be made read-only.");
    }

    public void Dispose()
    {
        Run("umount", Path);
        Directory.Delete(Path);
    }

    bool Mounted() => Run("mount", "-t", "tmpfs", "-o", "size=16k", "tmpfs", Path);

    static bool Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}

/// <summary>A test that needs a disk which is soon full.</summary>
sealed class SmallDiskFactAttribute : FactAttribute
{
    public SmallDiskFactAttribute()
    {
        if (!SmallDisk.IsPossible) Skip = "Needs the right to mount a file system in memory.";
    }
}
