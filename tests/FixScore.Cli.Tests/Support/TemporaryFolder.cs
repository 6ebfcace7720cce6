namespace FixScore.Cli.Tests.Support;

/// <summary>A folder that goes away with the test.</summary>
sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("fixscore-cli-").FullName;

    public string[] Files => [.. Directory.GetFileSystemEntries(Path).Select(System.IO.Path.GetFileName).OfType<string>().Order(StringComparer.Ordinal)];

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, ReadOnlySpan<byte> bytes)
    {
        System.IO.File.WriteAllBytes(File(name), bytes);
        return File(name);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
