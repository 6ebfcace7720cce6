using PuppeteerSharp.Media;

namespace FixScore.Browser.Tests;

/// <summary>How a page is looked at.</summary>
/// <param name="Width">Of the window, in CSS pixels.</param>
/// <param name="Scheme">The colour scheme that the reader prefers.</param>
/// <param name="Media">Screen or print.</param>
/// <param name="Scripts">Whether the browser runs scripts of the page.</param>
sealed record View(int Width, string Scheme = "light", MediaType Media = MediaType.Screen, bool Scripts = true)
{
    /// <summary>A telephone (also 1280 pixels at four times the size, WCAG 2.2 success criterion 1.4.10), a desk, a wall.</summary>
    public static int[] Widths { get; } = [320, 1024, 3840];

    public static string[] Schemes { get; } = ["light", "dark"];
}
