namespace FixScore.Cli.Files;

/// <summary>Bytes to read and the name to say of them.</summary>
/// <param name="Name">The name.</param>
/// <param name="Bytes">The bytes.</param>
sealed record Input(string Name, ReadOnlyMemory<byte> Bytes)
{
    public const string StandardInput = "-";

    // A little more than the formats take: enough for the reader to see that it is too much, whatever the file's size.
    const int Most = (64 << 20) + 4;

    /// <summary>The bytes without a byte order mark.</summary>
    public ReadOnlyMemory<byte> WithoutMark => Bytes.Span.StartsWith("\uFEFF"u8) ? Bytes[3..] : Bytes;

    public static Input Read(string path, Stream standardInput)
    {
        using var stream = Open(path, standardInput);
        try
        {
            return new(path == StandardInput ? "<standard input>" : path, All(stream));
        }
        catch (IOException)
        {
            throw new InputException(path, "input-unreadable", "cannot be read", "Check the name and your rights.");
        }
    }

    /// <summary>A file as a stream, or standard input.</summary>
    public static Stream Open(string path, Stream standardInput)
    {
        try
        {
            if (path == StandardInput) return standardInput;
            if (Directory.Exists(path)) throw new InputException(path, "input-is-a-folder", "is a folder, not a file", "Name the files in it.");
            return File.OpenRead(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new InputException(path, "input-unreadable",
                failure is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : "cannot be read", "Check the name and your rights.");
        }
    }

    static byte[] All(Stream stream)
    {
        using var buffer = new MemoryStream(stream.CanSeek ? (int)Math.Min(stream.Length, Most) : 0);
        var block = new byte[81920];
        for (int read; buffer.Length < Most && (read = stream.Read(block, 0, (int)Math.Min(block.Length, Most - buffer.Length))) > 0;) buffer.Write(block, 0, read);
        return buffer.ToArray();
    }
}

/// <summary>Input that cannot be had.</summary>
sealed class InputException(string name, string code, string message, string hint) : Exception(message)
{
    public string Name { get; } = name;

    public string Code { get; } = code;

    public string Hint { get; } = hint;

    /// <summary>The message as a sentence of its own.</summary>
    public string Sentence => $"{char.ToUpperInvariant(Message[0])}{Message[1..]}.";
}
