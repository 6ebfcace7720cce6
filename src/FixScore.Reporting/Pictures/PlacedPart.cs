using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>A part with its place.</summary>
/// <param name="Drawn">The part.</param>
/// <param name="Top">The upper edge of its box.</param>
/// <param name="Height">The box's height.</param>
/// <param name="Lines">What stands below the name.</param>
sealed record PlacedPart(PicturePart Drawn, int Top, int Height, ImmutableArray<BoxLine> Lines)
{
    public int Middle => Top + Measures.NameMiddle;

    public int Bottom => Top + Height;
}

/// <summary>A line of a box: text, or signs with their words.</summary>
/// <param name="Text">The text; empty where there are signs.</param>
/// <param name="Hazards">The hazards that stand on it.</param>
sealed record BoxLine(string Text, ImmutableArray<Hazard> Hazards);

/// <summary>A layer with its place.</summary>
sealed record PlacedBand(PictureBand Band, int Top, int Bottom, ImmutableArray<PlacedPart> Parts);

/// <summary>A joint with its place.</summary>
/// <param name="Drawn">The joint.</param>
/// <param name="Lane">Place of the upright line.</param>
/// <param name="Ends">Heights at which it leaves its parts, downwards.</param>
/// <param name="Word">That of the ends above which the word stands.</param>
sealed record PlacedJoint(PictureJoint Drawn, int Lane, ImmutableArray<int> Ends, int Word);

/// <summary>Joints of a part that are only counted, with the place of the words.</summary>
sealed record PlacedCount(int Count, int Y);
