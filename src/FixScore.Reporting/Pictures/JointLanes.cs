using System.Collections.Immutable;

namespace FixScore.Reporting.Pictures;

/// <summary>Gives each joint an upright line that it shares with no other at the same height: short ones stand nearest to the boxes.</summary>
static class JointLanes
{
    const int Apart = 8;

    public static ImmutableArray<PlacedJoint> Of(ImmutableArray<(PictureJoint Joint, ImmutableArray<int> Ends, int Word)> joints, int left)
    {
        var (lanes, placed) = (new List<List<(int Top, int Bottom)>>(), ImmutableArray.CreateBuilder<PlacedJoint>());
        foreach (var (joint, ends, word) in joints.OrderBy(each => each.Ends[^1] - each.Ends[0]))
        {
            var (top, bottom) = (ends[0] - Apart, ends[^1] + Apart);
            var lane = lanes.FindIndex(taken => taken.TrueForAll(other => bottom < other.Top || other.Bottom < top));
            if (lane < 0)
            {
                lane = lanes.Count;
                lanes.Add([]);
            }
            lanes[lane].Add((ends[0], ends[^1]));
            placed.Add(new(joint, left + lane * Measures.JointPitch, ends, word));
        }
        return placed.ToImmutable();
    }
}
