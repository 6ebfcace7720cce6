using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Sheet;

namespace FixScore.Reporting.Reports;

/// <summary>How to get at the parts that matter most: what each takes, and the way in full.</summary>
sealed class RoutesSection(CultureInfo culture)
{
    const int MostInFull = 12;

    readonly RouteCosts costs = new(culture);

    /// <summary>The section.</summary>
    /// <param name="source">The record.</param>
    /// <param name="picture">The routes drawn, to stand before the table; none when <c>null</c>.</param>
    public Section Of(TeardownCase source, Picture? picture = null)
    {
        var (record, parts) = (source.Record, PriorityParts.Of(source.Record));
        var groups = RouteGroup.Of(source, parts.Shown);
        ImmutableArray<Block> blocks = record.Operations.Count == 0 && record.Joints.Count == 0
            ? [new Prose("How the device is held together and comes apart is not recorded.", Tone.Open)]
            : [.. Table(record, groups, picture), .. Unreached(record, groups), .. Harmed(record, groups), .. InFull(record, groups, parts)];
        return new("Getting in", blocks) { Anchor = "getting-in" };
    }

    IEnumerable<Block> Table(TeardownRecord record, ImmutableArray<RouteGroup> groups, Picture? picture)
    {
        yield return new Prose("The shortest way to each part without damage to anything else, counted from the closed device.");
        foreach (var caution in Cautions(record, groups)) yield return caution;
        if (picture is not null) yield return picture;
        var terms = new RecordTerms(record, culture);
        var key = new ToolKey(record, [.. groups.Where(group => group.IsReachable).Select(group => group.Route.Way!)], terms);
        // Parts keep the order of the record, although those of a group share a route.
        var rows = from part in record.Parts from each in groups where each.Asked.Contains(part) select Row(terms.Part(part.Id), each.Route, key);
        yield return new Grid("Shortest routes",
            ["Part", new("Steps", GridKind.Number), new("Operations", GridKind.Number), new("Minutes", GridKind.Number), "Tools", new("Proven shortest") { IsExtra = true }], [.. rows]);
        yield return key.Legend;
        yield return new Prose("A step ends with the removal of a part or with a change of tool (Regulation (EU) 2023/1669 Annex I (20) and Annex IV point 5).", Tone.Quiet);
    }

    ImmutableArray<GridCell> Row(string part, Route route, ToolKey key) => route is { Reachability: Reachability.Reachable, Way: { } way }
        ? [part, Cell(way.Steps), Cell(way.Stops.Length), costs.Minutes(way.Seconds), key.Marks(way), costs.Proof(route) + (route.Damages.IsEmpty ? "" : "; damages the part")]
        : [part, "-", "-", "-", "-", State(route)];

    GridCell Cell(Interval value) => costs.Number(value);

    static string State(Route route) => route switch
    {
        { Reachability: Reachability.Unknown } => "route not known",
        { Way: not null } => "only with damage",
        _ => "cannot be freed",
    };

    IEnumerable<Block> Unreached(TeardownRecord record, ImmutableArray<RouteGroup> groups)
    {
        var terms = new RecordTerms(record, culture);
        yield return new Items([.. groups.Where(group => !group.IsReachable).Select(group => new Item(
            $"{Asked(group, terms)}: {State(group.Route)}. {RecordTerms.Sentence(group.Route.Why?.ToString(culture) ?? "")}", group.Route.Reachability == Reachability.Unknown ? Tone.Open : Tone.Mind))]);
    }

    // A route may harm what is taken out; whoever wants to keep the part must know before the table sends them there.
    IEnumerable<Block> Harmed(TeardownRecord record, ImmutableArray<RouteGroup> groups)
    {
        var terms = new RecordTerms(record, culture);
        yield return new Items([.. groups.Where(group => group.IsReachable && !group.Route.Damages.IsEmpty).Select(group => new Item(
            $"{Asked(group, terms)}: the shortest route damages {string.Join(", ", group.Route.Damages)} ({string.Join(", ", group.Route.Way!.Stops.Where(stop => !stop.Operation.Damages.IsEmpty).Select(stop => stop.Operation.Id))}). {Harmless(group.Route)}", Tone.Mind))]);
    }

    string Harmless(Route route)
    {
        string[] ways = [.. route.Recorded.Where(each => each.Way.Stops.All(stop => stop.Operation.Damages.IsEmpty)).Select(each => $"{each.Sequence.Id} ({costs.Steps(each.Way.Steps)}: {string.Join(", ", each.Way.Operations)})")];
        return ways.Length > 0 ? $"To keep it: {string.Join("; or ", ways)}." : "A way that keeps it is not among the recorded sequences.";
    }

    static string Asked(RouteGroup group, RecordTerms terms) => terms.Parts(group.Asked.Select(part => part.Id));

    IEnumerable<Block> InFull(TeardownRecord record, ImmutableArray<RouteGroup> groups, PriorityParts parts)
    {
        RouteGroup[] known = [.. groups.Where(group => group.Route.Way is not null)];
        var left = known.Length - MostInFull;
        if (left > 0) yield return new Prose($"In full below: the first {costs.Number(MostInFull)} routes; {costs.Number(left)} more are left out. fixscore route RECORD --part PART tells any of them.");
        if (parts.LeftOut > 0) yield return new Prose($"{(parts.ByRole ? "Told are the parts that are replaced most" : "Told are the first parts of the record")}; {costs.Number(parts.LeftOut)} other parts are left out. fixscore route RECORD tells them all.", Tone.Quiet);
        foreach (var group in known.Take(MostInFull)) yield return InFull(record, group);
    }

    Section InFull(TeardownRecord record, RouteGroup group)
    {
        var terms = new RecordTerms(record, culture);
        return new($"Route to {Asked(group, terms)}", [.. Summary(group, terms), new WayItems(record, culture).Of(group.Route.Way!)]) { Anchor = $"route-{group.Asked[0].Id}", IsFolded = true };
    }

    IEnumerable<Block> Summary(RouteGroup group, RecordTerms terms)
    {
        var (route, way) = (group.Route, group.Route.Way!);
        yield return group.IsReachable ? new Prose($"{costs.Of(way)}. {costs.ProofInFull(route)}") : new Prose($"Not without damage; with least damage: {costs.Of(way)}.", Tone.Mind);
        if (!group.Others.IsEmpty) yield return new Prose($"Replaced together with {terms.Parts(group.Others)}: what joins them is not meant to be undone.");
        if (route.LeastWay is { } least && !least.Operations.SequenceEqual(way.Operations))
            yield return new Prose($"If tools not recorded are bare hands, {costs.Steps(least.Steps)}: {string.Join(", ", least.Operations)}.", Tone.Open);
        if (!route.Damages.IsEmpty) yield return new Prose($"Damages {string.Join(", ", route.Damages)}.", Tone.Mind);
        if (!route.AtRisk.IsEmpty) yield return new Prose($"When this was tried, on some unit it damaged {string.Join(", ", route.AtRisk)}.", Tone.Mind);
        foreach (var other in route.Recorded)
            yield return new Prose($"{(other.Sequence.By == SequenceAuthor.Maker ? "The maker's" : "The assessor's")} way, {other.Sequence.Id}: {costs.Of(other.Way)}.", Tone.Quiet);
    }

    // Recorded ways are named beside the shortest one, so what they need is warned of as well.
    static IEnumerable<Block> Cautions(TeardownRecord record, ImmutableArray<RouteGroup> groups)
    {
        ImmutableArray<SheetOperation> all = [.. groups.SelectMany(group => group.Route.Recorded.Select(each => each.Way).Concat(group.Route.Ways)).SelectMany(way => way.Stops).Select((stop, index) => new SheetOperation(index + 1, stop, IsAtOnce: false))];
        yield return Items.Of(SafetyText.For([SheetHazards.Touched(record, all, [.. groups.SelectMany(group => group.Asked).Select(part => part.Id)])]), Tone.Mind);
    }
}
