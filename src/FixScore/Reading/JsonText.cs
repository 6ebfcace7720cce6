using System.Text.Json;
using System.Text.Unicode;

namespace FixScore.Reading;

/// <summary>Bytes become a JSON document, or the one problem that makes them no JSON in UTF-8.</summary>
static class JsonText
{
    public const int MaxBytes = 64 << 20;
    public const int MaxDepth = 64;

    static readonly JsonDocumentOptions Strict = new() { MaxDepth = MaxDepth };

    public static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> bytes) =>
        bytes.Span.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;

    /// <summary>The bytes of a file; of one that is too large only enough to tell.</summary>
    public static ReadOnlyMemory<byte> Load(string path)
    {
        using var file = File.OpenRead(path);
        using var read = new MemoryStream(file.CanSeek ? (int)Math.Min(file.Length, MaxBytes + 4L) : 0);
        var block = new byte[81920];
        // What a file says of its length need not be so: pipes have none, files of the system say 0, others grow.
        for (int got; read.Length < MaxBytes + 4 && (got = file.Read(block)) > 0;) read.Write(block, 0, got);
        return read.GetBuffer().AsMemory(0, (int)read.Length);
    }

    /// <summary>The document, or the problem with its byte offset.</summary>
    public static (JsonDocument? Document, Problem? Problem, int Offset) Parse(ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length > MaxBytes) return (null, TooLarge, 0);
        if (Encoding(bytes.Span) is { } wrong) return (null, wrong.Problem, wrong.Offset);
        if (bytes.Span.TrimStart(" \t\r\n"u8).IsEmpty) return (null, Empty, 0);
        try
        {
            var document = JsonDocument.Parse(bytes, Strict);
            if (BrokenNames.First(bytes.Span) is not { } broken) return (document, null, 0);
            document.Dispose();
            return (null, broken.Problem, broken.Offset);
        }
        catch (JsonException failure)
        {
            var offset = OffsetOf(bytes.Span, failure);
            return (null, IsTooDeep(bytes.Span, offset) ? TooDeep : SyntaxProblem.At(bytes.Span, offset), offset);
        }
    }

    public static Problem TooLarge { get; } = Error(
        "json.too-large", "The text is larger than 64 MiB.", "Split it, or leave out what is not an observation.");

    static Problem Empty { get; } = Error("json.empty", "There is no text.", "Start from 'fixscore new record' or 'fixscore new profile'.");

    static Problem TooDeep { get; } = Error("json.too-deep", "Objects and lists are nested more than 64 deep.", "No format here needs more than a few levels.");

    static (Problem Problem, int Offset)? Encoding(ReadOnlySpan<byte> bytes)
    {
        if (LooksLikeUtf16(bytes))
            return (Error("json.encoding", "The text is not in UTF-8 but in UTF-16 or UTF-32.", "Save the file as UTF-8."), 0);
        if (Utf8.IsValid(bytes)) return null;
        var bad = FirstInvalid(bytes);
        return (Error("json.encoding", "A byte here is not valid UTF-8.", "Save the file as UTF-8."), bad);
    }

    // JSON begins with an ASCII character, so a zero among the first four bytes gives wide encodings away (RFC 4627, section 3).
    static bool LooksLikeUtf16(ReadOnlySpan<byte> bytes) =>
        bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] || bytes[..Math.Min(4, bytes.Length)].Contains((byte)0);

    static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        var offset = 0;
        while (System.Text.Rune.DecodeFromUtf8(bytes[offset..], out _, out var consumed) == System.Buffers.OperationStatus.Done) offset += consumed;
        return offset;
    }

    static bool IsTooDeep(ReadOnlySpan<byte> bytes, int offset)
    {
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = int.MaxValue });
        try
        {
            while (reader.TokenStartIndex <= offset && reader.Read())
                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray && reader.CurrentDepth >= MaxDepth) return true;
        }
        catch (JsonException)
        {
            // The same fault again: it is one of syntax.
        }
        return false;
    }

    static int OffsetOf(ReadOnlySpan<byte> bytes, JsonException failure)
    {
        var offset = 0;
        for (var line = failure.LineNumber ?? 0; line > 0; line--) offset += bytes[offset..].IndexOf((byte)'\n') + 1;
        return (int)Math.Min(bytes.Length, offset + (failure.BytePositionInLine ?? 0));
    }

    static Problem Error(string code, string text, string hint) => Problem.Of(Severity.Error, Pointer.Root, code, text, hint);
}
