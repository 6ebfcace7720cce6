using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reporting.Pictures;

/// <summary>Where everything stands: one row for each part, so that no two boxes nor two texts can meet.</summary>
sealed class PictureLayout
{
    readonly PictureScene scene;
    readonly Dictionary<string, Part> parts;
    readonly Dictionary<string, int> rows;
    readonly PortPlan ports;

    public PictureLayout(PictureScene scene, int top)
    {
        (this.scene, Top) = (scene, top);
        parts = scene.Record.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        rows = scene.Parts.Index().ToDictionary(part => part.Item.Part.Id, part => part.Index, StringComparer.Ordinal);
        ports = new(scene.Joints, rows);
        Bands = Placed();
        var places = Bands.SelectMany(band => band.Parts).ToDictionary(part => part.Drawn.Part.Id, StringComparer.Ordinal);
        Parts = places;
        Joints = JointLanes.Of([.. scene.Joints.Select((joint, index) => (joint, ports.EndsOf(joint, places), ports.WordAt(joint, index, places)))], BoxRight + Measures.JointLabel);
    }

    public int Top { get; }

    public ImmutableArray<PlacedBand> Bands { get; }

    public IReadOnlyDictionary<string, PlacedPart> Parts { get; }

    public ImmutableArray<PlacedJoint> Joints { get; }

    public int Bottom => Bands.Select(band => band.Bottom).LastOrDefault(Top);

    public int BoxLeft => LaneAt(scene.Routes.Length) + 4;

    public int BoxRight => BoxLeft + Measures.BoxWidth;

    public int Width => Math.Max(Measures.LeastWidth, Math.Max(
        BoxRight + Measures.JointLabel, Joints.Select(joint => joint.Lane).DefaultIfEmpty(0).Max()) + Measures.Margin + Measures.JointPitch);

    public static int LaneAt(int index) => Measures.Margin + Measures.DepthWidth + Measures.LanePitch / 2 + index * Measures.LanePitch;

    /// <summary>Where the joints that are only counted are told; <c>null</c> where there are none.</summary>
    public PlacedCount? CountAt(PlacedPart part) =>
        part.Drawn.LooseJoints == 0 ? null : new(part.Drawn.LooseJoints, ports.CountAt(part));

    ImmutableArray<PlacedBand> Placed()
    {
        var (bands, y) = (ImmutableArray.CreateBuilder<PlacedBand>(), Top);
        foreach (var band in scene.Bands)
        {
            var placed = Placed(band, y);
            bands.Add(placed);
            y = placed.Bottom;
        }
        return bands.ToImmutable();
    }

    PlacedBand Placed(PictureBand band, int top)
    {
        var (placed, y) = (ImmutableArray.CreateBuilder<PlacedPart>(), top + Measures.BandGap);
        foreach (var part in band.Parts)
        {
            placed.Add(Placed(part, y));
            y += placed[^1].Height + Measures.BoxGap;
        }
        if (band.Folded > 0) y += Measures.BoxLeast;
        return new(band, top, y - Measures.BoxGap + Measures.BandGap, placed.ToImmutable());
    }

    PlacedPart Placed(PicturePart part, int top)
    {
        var lines = BoxLines.Of(part, id => BoxLines.NameOf(parts[id]));
        var words = Measures.BoxLeast + lines.Length * Measures.LineHeight;
        return new(part, top, Math.Max(words, ports.Height(part)), lines);
    }
}
