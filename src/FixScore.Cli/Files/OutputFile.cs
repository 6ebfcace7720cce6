namespace FixScore.Cli.Files;

/// <summary>Writes files whole or not at all: beside the target first, then in one move.</summary>
/// <remarks>A run that is killed can leave <c>fixscore-*.part</c> behind; no file of another name is ever half written. Of two that write the same file at once one is left, whole.</remarks>
static class OutputFile
{
    public static void Write(string path, byte[] bytes) => Write(path, stream => stream.Write(bytes));

    /// <summary>Writes what comes bit by bit: nothing stands there before all of it does.</summary>
    public static void Write(string path, Action<Stream> write)
    {
        try
        {
            if (path.Length == 0) throw new OutputException(path, "it has no name");
            var full = OutputPlace.Behind(Path.GetFullPath(path));
            if (Directory.Exists(full)) throw new OutputException(path, "it is a folder");
            using var device = OutputPlace.OpenDevice(full);
            if (device is null) Replace(full, write);
            else write(device);
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

    // The name is nobody else's: neither that of another process, also on another machine, nor of another thread.
    static void Replace(string path, Action<Stream> write)
    {
        var beside = Path.Combine(Path.GetDirectoryName(path)!, $"fixscore-{Path.GetRandomFileName()}.part");
        try
        {
            using (var file = File.Open(beside, FileMode.CreateNew, FileAccess.Write)) write(file);
            File.Move(beside, path, overwrite: true);
        }
        catch
        {
            Remove(beside);
            throw;
        }
    }

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
