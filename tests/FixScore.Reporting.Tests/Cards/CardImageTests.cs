using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using CsCheck;
using FixScore.Reporting.Cards;
using FixScore.Reporting.Images;
using SkiaSharp;

namespace FixScore.Reporting.Tests.Cards;

public sealed class CardImageTests
{
    static Picture Demo(CardShape shape, CardScheme scheme = CardScheme.Light) => Card.Draw(Bench.Demo[1], shape, CultureInfo.InvariantCulture, scheme);

    // Source: W3C, Portable Network Graphics, second edition, 5.2 (signature) and 11.2.2 (IHDR).
    [Theory]
    [InlineData(CardShape.Wide, 1920, 1080)]
    [InlineData(CardShape.Square, 1080, 1080)]
    public void The_header_says_the_size(CardShape shape, int width, int height)
    {
        var png = CardImage.Png(Bench.Demo[1], shape, CultureInfo.InvariantCulture);
        Assert.Equal([137, 80, 78, 71, 13, 10, 26, 10], png[..8]);
        Assert.Equal("IHDR"u8, png.AsSpan(12, 4));
        Assert.Equal((width, height), (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))));
    }

    [Fact]
    public void The_same_card_gives_the_same_bytes() => Assert.Equal(
        CardImage.Png(Deck.Ranked, CardShape.Square, CultureInfo.InvariantCulture), CardImage.Png(Deck.Ranked, CardShape.Square, CultureInfo.InvariantCulture));

    // Another reader of PNG sees what was drawn: its checksums hold too.
    [Fact]
    public void Another_reader_sees_the_colours()
    {
        var picture = Demo(CardShape.Wide, CardScheme.Dark);
        using var image = SKBitmap.Decode(CardImage.Png(picture));
        Assert.Equal((1920, 1080), (image.Width, image.Height));
        Assert.Equal(SKColor.Parse(Palette.Of(CardScheme.Dark, Tone.Paper)), image.GetPixel(3, 3));
        var bar = picture.Marks.OfType<Block>().First(block => block.Tone == Tone.Bar).Box;
        Assert.Equal(SKColor.Parse(Palette.Of(CardScheme.Dark, Tone.Bar)), image.GetPixel(bar.X + bar.Width / 2, bar.Y + bar.Height / 2));
    }

    [Fact]
    public void What_is_drawn_has_room_in_the_widths_that_are_estimated()
    {
        foreach (var words in Deck.Tame.SelectMany(picture => picture.Marks.OfType<Words>()))
            Assert.True(Width(words) <= words.Box.Width, words.ToString());
    }

    [Fact]
    public void Letters_without_a_glyph_are_told() => Assert.Equal("\u05E9\u05DC",
        CardImage.Lacks(Card.Draw(Deck.Named(Bench.Demo[1], "\u05E9\u05DC a\u00E9\u03B1\u0416"), CardShape.Wide, CultureInfo.InvariantCulture)));

    [Fact]
    public void All_letters_of_the_demo_are_drawn() => Assert.All(Deck.Tame, picture => Assert.Empty(CardImage.Lacks(picture)));

    [Fact]
    public void Hostile_names_are_drawn() => Assert.All(Deck.Hostile.Take(6), picture => Assert.NotEmpty(CardImage.Png(picture)));

    // The runtime's own reader of RFC 1950 gives back what was packed, and checks the sum.
    [Fact]
    public void What_is_packed_comes_back() => Gen.Select(Gen.Byte.Array[0, 400], Gen.Int[1, 300]).Sample((part, times) =>
    {
        byte[] data = [.. Enumerable.Range(0, times).SelectMany(time => part.Append((byte)(time % 251)))];
        using var packed = new MemoryStream(Deflate.Zlib(data));
        using var unpacking = new ZLibStream(packed, CompressionMode.Decompress);
        using var back = new MemoryStream();
        unpacking.CopyTo(back);
        Assert.Equal(data, back.ToArray());
    }, iter: 50);

    // Sources: the check value of CRC-32/ISO-HDLC in common catalogues is that of the digits 1 to 9 (from memory); RFC 1950 starts Adler-32 at 1.
    [Fact]
    public void Checksums_are_those_of_the_standards()
    {
        Assert.Equal(0xCBF43926u, Checksum.Crc32("123"u8, "456789"u8));
        Assert.Equal(1u, Checksum.Adler32([]));
        Assert.Equal(0x091E01DEu, Checksum.Adler32("123456789"u8));
    }

    static double Width(Words words) => words.Text.EnumerateRunes().Sum(letter =>
    {
        var faces = Typefaces.Of(words.Face);
        var face = faces.First(each => each.Has(letter));
        return face.Drawn(letter).Advance * words.Size / face.Units;
    });
}
