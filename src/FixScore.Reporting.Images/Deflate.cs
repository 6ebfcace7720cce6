using System.Buffers.Binary;

namespace FixScore.Reporting.Images;

/// <summary>Packs bytes by RFC 1950 and 1951, with fixed codes and the nearest match of each three bytes.</summary>
/// <remarks>The runtime's own packer may find other matches on other processors; this one gives the same bytes everywhere.</remarks>
sealed class Deflate
{
    const int Shortest = 3;
    const int Longest = 258;
    const int Window = 32768;
    const int EndOfBlock = 256;

    // Source: RFC 1951, section 3.2.5.
    static readonly int[] Lengths = [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];
    static readonly int[] Distances = [1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145, 8193, 12289, 16385, 24577];

    readonly List<byte> packed = [0x78, 0x01];
    readonly int[] last = new int[1 << 15];
    ulong waiting;
    int bits;

    /// <summary>The data in zlib's wrapping.</summary>
    public static byte[] Zlib(ReadOnlySpan<byte> data)
    {
        var deflate = new Deflate();
        deflate.Pack(data);
        Span<byte> checksum = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(checksum, Checksum.Adler32(data));
        deflate.packed.AddRange(checksum);
        return [.. deflate.packed];
    }

    void Pack(ReadOnlySpan<byte> data)
    {
        Put(0b011, 3);
        for (var at = 0; at < data.Length;)
        {
            var from = Earlier(data, at);
            var length = from < 0 ? 0 : data[at..Math.Min(data.Length, at + Longest)].CommonPrefixLength(data[from..]);
            if (length < Shortest) Symbol(data[at++]);
            else
            {
                Match(length, at - from);
                at += length;
            }
        }
        Symbol(EndOfBlock);
        if (bits > 0) Put(0, 8 - bits);
    }

    /// <summary>Where the same three bytes stood last, within reach; -1 for nowhere.</summary>
    int Earlier(ReadOnlySpan<byte> data, int at)
    {
        if (at + Shortest > data.Length) return -1;
        var key = (int)(unchecked((uint)(data[at] << 16 | data[at + 1] << 8 | data[at + 2]) * 2654435761u) >> 17);
        var from = last[key] - 1;
        last[key] = at + 1;
        return from >= 0 && at - from <= Window ? from : -1;
    }

    void Match(int length, int distance)
    {
        var code = Index(Lengths, length);
        Symbol(EndOfBlock + 1 + code);
        Put(length - Lengths[code], code is < 8 or 28 ? 0 : code / 4 - 1);
        var place = Index(Distances, distance);
        Put(Reversed(place, 5), 5);
        Put(distance - Distances[place], place < 4 ? 0 : place / 2 - 1);
    }

    static int Index(int[] starts, int value) => Array.BinarySearch(starts, value) is var at && at >= 0 ? at : ~at - 1;

    // Source: RFC 1951, section 3.2.6, the fixed codes.
    void Symbol(int symbol)
    {
        var (code, length) = symbol switch
        {
            < 144 => (0x30 + symbol, 8),
            < 256 => (0x190 + symbol - 144, 9),
            < 280 => (symbol - 256, 7),
            _ => (0xC0 + symbol - 280, 8),
        };
        Put(Reversed(code, length), length);
    }

    static int Reversed(int code, int length)
    {
        var reversed = 0;
        for (var bit = 0; bit < length; bit++) reversed = reversed << 1 | code >> bit & 1;
        return reversed;
    }

    void Put(int value, int length)
    {
        waiting |= (ulong)value << bits;
        for (bits += length; bits >= 8; bits -= 8)
        {
            packed.Add((byte)(waiting & 0xFF));
            waiting >>= 8;
        }
    }
}
