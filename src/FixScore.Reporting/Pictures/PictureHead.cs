using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>Title and how to read the picture, above it.</summary>
static class PictureHead
{
    const string HowToRead =
        "Outside is at the top, the core at the bottom. Each part lies in the layer of the steps after which its own shortest route sets it free. " +
        "Lines on the left are the routes to the parts named above them: a ring is a part that leaves on the way, a square the part the route is for; " +
        "the number in it says which operation of the route takes it out, a broken ring that it is only shifted aside. Lines on the right are joints between parts.";

    public static int Bottom(int width) => Words(width).Length * Measures.LineHeight + 52 + Measures.LaneRoom;

    public static Markup Of(string title, int width) => Markup.Join(
        [Pen.Words("route-title", Measures.Margin, 42, TextRoom.Fit(title, width - 2 * Measures.Margin, Measures.TitleSize)),
         .. Words(width).Select((line, row) => Pen.Words("route-soft", Measures.Margin, 66 + row * Measures.LineHeight, line))]);

    // Longer lines than this are hard to follow.
    static string[] Words(int width) => [.. TextRoom.Wrap(HowToRead, Math.Min(width, Measures.LeastWidth) - 2 * Measures.Margin, Measures.SmallSize)];
}
