using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Pictures;

/// <summary>What stands in a part's box.</summary>
static class BoxLines
{
    public const int Room = Measures.BoxWidth - 2 * Measures.BoxPadding;

    const int BetweenHazards = 10;

    // The width of a letter beside a target's name, which is heavier; a third of a regular letter's more is on the safe side.
    const int HeavierByPercent = 112;

    public static string Name(PicturePart part) =>
        TextRoom.Fit(NameOf(part.Part), part.IsTarget ? Room * 100 / HeavierByPercent : Room, Measures.NameSize);

    public static string NameOf(Part part) => string.IsNullOrWhiteSpace(part.Name) ? part.Id : part.Name;

    public static ImmutableArray<BoxLine> Of(PicturePart part, Func<string, string> nameOf) =>
        [.. Rides(part.Part, nameOf), .. Hazards(part.Hazards, Room).Select(line => new BoxLine("", line))];

    /// <summary>Hazards in lines that fit the room.</summary>
    public static IEnumerable<ImmutableArray<Hazard>> Hazards(ImmutableArray<Hazard> hazards, int room)
    {
        var (line, used) = (ImmutableArray<Hazard>.Empty, 0);
        foreach (var hazard in hazards)
        {
            if (!line.IsEmpty && used + Width(hazard) > room)
            {
                yield return line;
                (line, used) = ([], 0);
            }
            (line, used) = (line.Add(hazard), used + Width(hazard) + BetweenHazards);
        }
        if (!line.IsEmpty) yield return line;
    }

    /// <summary>Hazards of a line with the places of their signs.</summary>
    public static IEnumerable<(Hazard Hazard, int X)> Placed(ImmutableArray<Hazard> line, int x)
    {
        foreach (var hazard in line)
        {
            yield return (hazard, x);
            x += Width(hazard) + BetweenHazards;
        }
    }

    public static int WordAt(int x) => x + HazardSigns.Size + 5;

    static int Width(Hazard hazard) => WordAt(0) + TextRoom.Of(RecordTerms.Plainly(hazard), Measures.SmallSize);

    static IEnumerable<BoxLine> Rides(Part part, Func<string, string> nameOf) =>
        part.On is null ? [] : [new(TextRoom.Fit($"on {nameOf(part.On)}", Room, Measures.SmallSize), [])];
}
