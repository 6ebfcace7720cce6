namespace FixScore.Reporting.Images;

/// <summary>The checksums of PNG and zlib.</summary>
static class Checksum
{
    // Source: W3C, PNG, second edition, annex D: the polynomial of ISO 3309, bits reversed.
    const uint Polynomial = 0xEDB88320;

    // Source: RFC 1950, section 9: the largest prime below 65536.
    const uint Base = 65521;

    static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(index =>
        Enumerable.Range(0, 8).Aggregate((uint)index, (value, _) => (value & 1) == 0 ? value >> 1 : value >> 1 ^ Polynomial))];

    public static uint Crc32(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second) => ~Crc32(Crc32(uint.MaxValue, first), second);

    public static uint Adler32(ReadOnlySpan<byte> data)
    {
        var (low, high) = (1u, 0u);
        foreach (var each in data)
        {
            low = (low + each) % Base;
            high = (high + low) % Base;
        }
        return high << 16 | low;
    }

    static uint Crc32(uint crc, ReadOnlySpan<byte> data)
    {
        foreach (var each in data) crc = Table[(crc ^ each) & 0xFF] ^ crc >> 8;
        return crc;
    }
}
