using System.Buffers.Binary;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>Pictures for people to look at, in <c>artifacts/screenshots</c>.</summary>
[Collection(Chromium.Shared)]
public sealed class ScreenshotTests(Chromium chromium)
{
    static readonly string Folder = Directory.CreateDirectory(Path.Combine(Installed.Repository, "artifacts", "screenshots")).FullName;

    public static TheoryData<string, int> PagesAndWidths => Pages.At(Pages.Widths);

    [BrowserTheory]
    [MemberData(nameof(PagesAndWidths))]
    public async Task A_picture_in_each_scheme_is_as_wide_as_the_window(string name, int width)
    {
        await using var visit = await chromium.Open(name, width);
        foreach (var scheme in (string[])["light", "dark"])
        {
            await visit.Show(MediaType.Screen, scheme);
            // The wall shows one window full: a whole page of that width is mostly paper.
            var picture = await visit.Tab.ScreenshotDataAsync(new ScreenshotOptions { FullPage = width <= 1024, OptimizeForSpeed = true });
            await File.WriteAllBytesAsync(Path.Combine(Folder, $"{name}-{width}-{scheme}.png"), picture);
            Assert.Equal(width, Width(picture));
        }
    }

    // PNG (ISO/IEC 15948), 11.2.2: the first chunk begins with the width, after a signature of 8 bytes and the chunk's length and name.
    static int Width(byte[] png) => BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16));
}
