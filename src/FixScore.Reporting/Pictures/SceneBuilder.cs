using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Pictures;

/// <summary>Decides what is drawn.</summary>
sealed class SceneBuilder(TeardownCase source, RouteQuery query, CultureInfo culture)
{
    /// <summary>The most routes that are drawn side by side; further ones are told below the picture.</summary>
    const int MostRoutes = 16;

    readonly RecordTerms terms = new(source.Record, culture);

    public PictureScene Build()
    {
        var record = source.Record;
        var asked = query with { Parts = query.Parts.IsDefaultOrEmpty ? PriorityRoles.PartsOf(record) : [.. query.Parts.Distinct(StringComparer.Ordinal)] };
        var found = new FoundParts(source, asked);
        ImmutableArray<RouteTarget> targets = [.. asked.Parts.Select(id => new RouteTarget(record.Parts.First(part => part.Id == id), found.To(id)))];
        ImmutableArray<PictureRoute> routes = [.. targets.Where(IsFree).Take(MostRoutes).Select(Route)];
        var parts = DrawnParts.Of(record, routes, targets);
        var joints = new DrawnJoints(record, parts, terms);
        var bands = Bands(found, parts, targets, joints);
        return new(source, RowOrder.Of(bands, joints.Lines, routes), routes, joints.Lines, targets, [.. Notes(found, parts, targets, joints)]);
    }

    static bool IsFree(RouteTarget target) => target.Route.Reachability == Reachability.Reachable;

    static PictureRoute Route(RouteTarget target) => new(target,
        [.. target.Route.Way!.Stops.Index()
            .SelectMany(stop => stop.Item.Taken, (stop, part) => new RouteVisit(part, stop.Index + 1, stop.Item.Operation.Removes.IsEmpty))
            .GroupBy(visit => visit.Part, StringComparer.Ordinal).Select(visits => visits.Last())]);

    ImmutableArray<PictureBand> Bands(FoundParts found, ImmutableArray<Part> parts, ImmutableArray<RouteTarget> targets, DrawnJoints joints) =>
        [.. source.Record.Parts.GroupBy(found.Depth).OrderBy(layer => layer.Key).Select(layer =>
        {
            ImmutableArray<Part> drawn = [.. layer.Where(parts.Contains)];
            return new PictureBand(Title(layer.Key), [.. drawn.Select(part => Drawn(part, targets, joints))], layer.Count() - drawn.Length);
        })];

    string Title((int State, decimal High, decimal Low) depth) => depth switch
    {
        (0, 1, 1) => "1 step",
        (0, _, _) => $"{new Shown(culture).Points(new Interval(depth.Low, depth.High))} steps",
        (1, _, _) => "only by damage",
        _ => "not known",
    };

    static PicturePart Drawn(Part part, ImmutableArray<RouteTarget> targets, DrawnJoints joints)
    {
        IEnumerable<Hazard> hazards = SheetHazards.WithRole(part).Hazards;
        if (part.Role == Roles.Battery) hazards = hazards.Append(Hazard.LithiumCell);
        return new(part, targets.Any(target => target.Part.Id == part.Id), [.. hazards.Distinct().Order()], joints.CountedAt(part.Id));
    }

    IEnumerable<string> Notes(FoundParts found, ImmutableArray<Part> parts, ImmutableArray<RouteTarget> targets, DrawnJoints joints)
    {
        var record = source.Record;
        if (record.Parts.Count > parts.Length)
            yield return $"Folded: {terms.Number(parts.Length)} of {terms.Number(record.Parts.Count)} parts are drawn, those on the routes first; each layer says how many more lie in it. Joints of a kind between the same parts are one line.";
        if (joints.Counted > 0) yield return $"{terms.Number(joints.Counted)} joints hold a part that is not drawn, or are too many to draw; they are counted at their parts.";
        if (targets.Count(IsFree) > MostRoutes) yield return $"Routes drawn: the first {terms.Number(MostRoutes)}; the others are only listed.";
        if (targets.IsEmpty) yield return "No part of this record has a role that is usually repaired, so that no route is drawn.";
        if (!record.Joints.IsRecorded) yield return "What holds the parts is not recorded.";
        if (!record.Operations.IsRecorded) yield return "How the parts come free is not recorded.";
        else if (record.Operations.Count == 0) yield return "The record says that there is no operation to take it apart.";
        var open = record.Parts.Count(part => !found.To(part.Id).IsOptimal);
        if (open > 0) yield return $"For {terms.Number(open)} of the parts the best route found is taken; a shorter one is not ruled out, so that they may lie less deep.";
    }
}
