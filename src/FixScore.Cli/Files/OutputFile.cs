namespace FixScore.Cli.Files;

/// <summary>Writes files whole or not at all: beside the target first, then in one move.</summary>
static class OutputFile
{
    public static void Write(string path, byte[] bytes) => Write(path, stream => stream.Write(bytes));

    /// <summary>Writes what comes bit by bit: nothing stands there before all of it does.</summary>
    public static void Write(string path, Action<Stream> write)
    {
        try
        {
            if (path.Length == 0) throw new OutputException(path, "it has no name");
            var full = Path.GetFullPath(path);
            if (Directory.Exists(full)) throw new OutputException(path, "it is a folder");
            if (IsDevice(full)) Fill(full, write);
            else Replace(Behind(full), write);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new OutputException(path, Explain(failure));
        }
    }

    public static void MakeFolder(string path)
    {
        try
        {
            Directory.CreateDirectory(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new OutputException(path, "the folder cannot be made");
        }
    }

    static void Fill(string path, Action<Stream> write)
    {
        using var file = File.Open(path, FileMode.Create, FileAccess.Write);
        write(file);
    }

    static void Replace(string path, Action<Stream> write)
    {
        var beside = $"{path}.{Environment.ProcessId}.part";
        try
        {
            Fill(beside, write);
            File.Move(beside, path, overwrite: true);
        }
        catch
        {
            Remove(beside);
            throw;
        }
    }

    // A link stays a link: what it leads to is replaced.
    static string Behind(string path) =>
        new FileInfo(path).LinkTarget is null ? path : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;

    // Devices and pipes (/dev/null, /dev/stdout, /proc/self/fd/3) are written to; replacing one would break it for everybody.
    static bool IsDevice(string path) =>
        !OperatingSystem.IsWindows() && (path.StartsWith("/dev/", StringComparison.Ordinal) || path.StartsWith("/proc/", StringComparison.Ordinal));

    static string Explain(Exception failure) => failure switch
    {
        DirectoryNotFoundException => "there is no such folder",
        UnauthorizedAccessException => "it is not allowed",
        _ => failure.Message.TrimEnd('.'),
    };

    static void Remove(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // What could not be written can often not be removed either; the first failure is the one to tell.
        }
    }
}

/// <summary>Output that cannot be written.</summary>
sealed class OutputException(string path, string why) : Exception($"{path} cannot be written: {why}.");
