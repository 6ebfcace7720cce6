using FixScore.Reading;

namespace FixScore.Lines;

/// <summary>A line of a stream.</summary>
/// <param name="Number">Its number, from 1; blank lines count.</param>
/// <param name="Text">Its bytes, without the line's end. Of one that is too large only enough to tell.</param>
readonly record struct TextLine(long Number, ReadOnlyMemory<byte> Text);

/// <summary>Cuts a stream into lines, in bounded memory. Blank lines are passed over, a byte order mark at the start is skipped.</summary>
sealed class LineReader(Stream input)
{
    const int Most = JsonText.MaxBytes + 1;

    readonly byte[] block = new byte[128 * 1024];
    int start, end;
    long number;

    /// <summary>The next line that is not blank; <c>null</c> at the end.</summary>
    public TextLine? Next()
    {
        while (Line() is { } text)
        {
            var line = number == 1 ? JsonText.WithoutMark(text) : text;
            if (!line.Span.Trim(" \t\r"u8).IsEmpty) return new(number, line);
        }
        return null;
    }

    ReadOnlyMemory<byte>? Line()
    {
        if (start == end && !Fill()) return null;
        number++;
        using var longer = new MemoryStream();
        while (true)
        {
            var rest = block.AsSpan(start, end - start);
            var length = rest.IndexOf((byte)'\n');
            var piece = length < 0 ? rest : rest[..length];
            longer.Write(piece[..(int)Math.Min(piece.Length, Most - longer.Length)]);
            start += length < 0 ? piece.Length : length + 1;
            if (length >= 0 || !Fill()) return longer.ToArray();
        }
    }

    bool Fill()
    {
        (start, end) = (0, input.Read(block));
        return end > 0;
    }
}
