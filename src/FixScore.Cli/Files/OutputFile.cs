namespace FixScore.Cli.Files;

/// <summary>Writes files whole or not at all: beside the target first, then in one move.</summary>
static class OutputFile
{
    public static void Write(string path, byte[] bytes)
    {
        var full = Path.GetFullPath(path);
        var beside = $"{full}.{Environment.ProcessId}.part";
        try
        {
            if (Directory.Exists(full)) throw new OutputException(path, "it is a folder");
            File.WriteAllBytes(beside, bytes);
            File.Move(beside, full, overwrite: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            Remove(beside);
            throw new OutputException(path, failure is DirectoryNotFoundException ? "there is no such folder" : failure.Message);
        }
    }

    public static void MakeFolder(string path)
    {
        try
        {
            Directory.CreateDirectory(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new OutputException(path, "the folder cannot be made");
        }
    }

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
