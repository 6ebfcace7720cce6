using FixScore.Records;
using FixScore.Reporting.Html;

namespace FixScore.Reporting.Pictures;

/// <summary>A small sign for each hazard, in a square of 14 units. Drawn for this picture; always beside the hazard's word.</summary>
static class HazardSigns
{
    public const int Size = 14;

    public static Markup At(Hazard hazard, int x, int y) =>
        Pen.Shape("path", "route-sign", ("d", Path(hazard)), ("transform", $"translate({Pen.Text(x)} {Pen.Text(y)})"));

    static string Path(Hazard hazard) => hazard switch
    {
        Hazard.LithiumCell => "M1 4h10v7h-10zM11 6h2v3h-2M4 4v7M8 6l-2 2h2l-2 2",
        Hazard.Glass => "M2 1h10v12h-10zM2 4l4 2-1 3 3 1 4 3M6 6l6-3",
        Hazard.SharpEdge => "M1 12l12-11v11zM4 12v-2M7 12v-3",
        Hazard.MainsCapacitor => "M0 7h5M9 7h5M5 2v10M9 2v10",
        Hazard.Laser => "M1 7h6M7 7l6-5M7 7h6M7 7l6 5M1 4v6",
        Hazard.HotSurface => "M1 13h12M3 10q-2-2 0-4t0-4M7 10q-2-2 0-4t0-4M11 10q-2-2 0-4t0-4",
        Hazard.FlammableSolvent => "M7 1q5 6 5 8a5 4 0 0 1-10 0q0-2 5-8zM4 9q1 2 3 2",
        Hazard.Fumes => "M2 12q3-2 0-5t2-6M7 12q3-2 0-5t2-6M12 12q2-2-1-5t2-6",
        Hazard.SpringTension => "M1 7h1l2-5 2 10 2-10 2 10 2-5h1",
        Hazard.StrongMagnet => "M2 1v6a5 5 0 0 0 10 0v-6h-3v6a2 2 0 0 1-4 0v-6zM2 4h3M9 4h3",
        _ => "M2 13v-3M12 13v-3M2 10h10M7 10v-3M4 5l3-4 3 4M7 1v6",
    };
}
