namespace FixScore.Cli.Files;

/// <summary>Where output comes to stand, behind links, and whether there is a file at all.</summary>
static class OutputPlace
{
    // Files in memory have their place among the devices.
    static readonly string[] Devices = ["/dev/", "/proc/"], FilesAmongDevices = ["/dev/shm/"];

    /// <summary>What a full path leads to. A link stays a link: what it leads to is written, also when it leads to a device or goes through a folder that is a link.</summary>
    public static string Behind(string path)
    {
        var folder = Path.GetDirectoryName(path);
        if (folder is null) return path;
        var here = Path.Combine(Target(Behind(folder)), Path.GetFileName(path));
        return Target(here);
    }

    /// <summary>A device or pipe (/dev/null, /proc/self/fd/3, a named pipe), open: it is written to, as replacing it would break it for everybody. <c>null</c> where a file is or can be.</summary>
    public static Stream? OpenDevice(string path)
    {
        if (OperatingSystem.IsWindows() || !File.Exists(path)) return null;
        return IsDevice(path) ? File.Open(path, FileMode.Truncate, FileAccess.Write) : OpenPipe(path);
    }

    static string Target(string path) => new FileInfo(path).LinkTarget is null || IsDevice(path) ? path : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;

    static bool IsDevice(string path) => StartsWithOne(path, Devices) && !StartsWithOne(path, FilesAmongDevices);

    static bool StartsWithOne(string path, string[] folders) => Array.Exists(folders, folder => path.StartsWith(folder, StringComparison.Ordinal));

    // Opening a pipe waits for whoever reads it. It is opened once: the reader takes a second opening for another text.
    static FileStream? OpenPipe(string path)
    {
        try
        {
            var file = File.Open(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
            if (!file.CanSeek) return file;
            file.Dispose();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // What cannot be opened can still be replaced where the folder allows it.
        }
        return null;
    }
}
