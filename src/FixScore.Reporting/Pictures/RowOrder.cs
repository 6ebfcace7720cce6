using System.Collections.Immutable;

namespace FixScore.Reporting.Pictures;

/// <summary>Orders the parts inside each layer so that lines get short.</summary>
/// <remarks>
/// Layers are given by the routes, so only the order inside them is free. It is found by the barycentre method (K. Sugiyama,
/// S. Tagawa, M. Toda, Methods for Visual Understanding of Hierarchical System Structures, 1981; from memory) with a
/// fixed number of sweeps over whole numbers: the same on every machine. General libraries for graphs choose layers of
/// their own and reckon in floating point, so that none serves here.
/// </remarks>
static class RowOrder
{
    const int Sweeps = 8;

    public static ImmutableArray<PictureBand> Of(
        ImmutableArray<PictureBand> bands, ImmutableArray<PictureJoint> joints, ImmutableArray<PictureRoute> routes)
    {
        var near = Neighbours(bands, joints, routes);
        for (var sweep = 0; sweep < Sweeps; sweep++)
        {
            var places = Places(bands);
            bands = [.. bands.Select(band => band with { Parts = [.. band.Parts.OrderBy(part => Mean(part.Part.Id, near, places))] })];
        }
        return bands;
    }

    static Dictionary<string, int> Places(ImmutableArray<PictureBand> bands) =>
        bands.SelectMany(band => band.Parts).Index().ToDictionary(part => part.Item.Part.Id, part => part.Index, StringComparer.Ordinal);

    // In thousandths of a row. A part counts as its own neighbour: one without others stays, and no order swings to and fro.
    static long Mean(string part, ILookup<string, string> near, Dictionary<string, int> places)
    {
        var all = near[part].Append(part).Where(places.ContainsKey).Select(each => 1000L * places[each]).ToArray();
        return all.Sum() / all.Length;
    }

    static ILookup<string, string> Neighbours(ImmutableArray<PictureBand> bands, ImmutableArray<PictureJoint> joints, ImmutableArray<PictureRoute> routes)
    {
        var held = joints.SelectMany(joint => joint.Parts.SelectMany(one => joint.Parts.Select(other => (one, other))));
        var riding = bands.SelectMany(band => band.Parts).Where(part => part.Part.On is not null).SelectMany(part => Both(part.Part.Id, part.Part.On!));
        var freed = routes.SelectMany(route => route.Visits.SelectMany(visit => Both(visit.Part, route.Target.Part.Id)));
        return held.Concat(riding).Concat(freed).Where(pair => pair.Item1 != pair.Item2).ToLookup(pair => pair.Item1, pair => pair.Item2, StringComparer.Ordinal);
    }

    static IEnumerable<(string, string)> Both(string one, string other) => [(one, other), (other, one)];
}
