using System.Buffers.Binary;

namespace FixScore.Reporting.Images;

/// <summary>Pixels as a PNG file (W3C, Portable Network Graphics, second edition): 8 bits a channel, no alpha, nothing about time or machine.</summary>
static class PngFile
{
    const int Channels = 3;

    /// <summary>The file.</summary>
    /// <param name="width">Width in pixels.</param>
    /// <param name="height">Height in pixels.</param>
    /// <param name="pixels">Four bytes a pixel, the last without meaning.</param>
    public static byte[] Of(int width, int height, ReadOnlySpan<byte> pixels)
    {
        using var file = new MemoryStream();
        file.Write([0x89, (byte)'P', (byte)'N', (byte)'G', (byte)'\r', (byte)'\n', 0x1A, (byte)'\n']);
        Span<byte> header = stackalloc byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header[4..], height);
        (header[8], header[9]) = (8, 2);
        Chunk(file, "IHDR"u8, header);
        Chunk(file, "IDAT"u8, Deflate.Zlib(Rows(width, height, pixels)));
        Chunk(file, "IEND"u8, []);
        return file.ToArray();
    }

    // Each row is led by the number of its filter: none.
    static byte[] Rows(int width, int height, ReadOnlySpan<byte> pixels)
    {
        var rows = new byte[height * (1 + width * Channels)];
        var to = 0;
        for (var pixel = 0; pixel < width * height; pixel++)
        {
            if (pixel % width == 0) to++;
            pixels.Slice(pixel * 4, Channels).CopyTo(rows.AsSpan(to));
            to += Channels;
        }
        return rows;
    }

    static void Chunk(Stream file, ReadOnlySpan<byte> name, ReadOnlySpan<byte> content)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, content.Length);
        file.Write(number);
        file.Write(name);
        file.Write(content);
        BinaryPrimitives.WriteUInt32BigEndian(number, Checksum.Crc32(name, content));
        file.Write(number);
    }
}
