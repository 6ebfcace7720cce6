using System.Globalization;
using FixScore.Disassembly;
using FixScore.Reporting;

namespace FixScore.Cli.Commands.Routing;

/// <summary>What a route costs and how far that is proven, in words.</summary>
sealed class RouteText(CultureInfo culture)
{
    public const string Nothing = "-";

    readonly Shown shown = new(culture);

    public string Why(Route route) => route.Why?.ToString(culture) ?? "";

    public string Cost(Interval steps, int operations, Interval? seconds) => $"{Steps(steps)}, {Counted(operations, "operation")}, {Time(seconds)}";

    public string Steps(Interval steps) => Counted(steps, "step");

    public string Time(Interval? seconds) => seconds is { } known ? $"{shown.Points(known)} s" : "time not recorded";

    public string Number(Interval? value) => value is { } known ? shown.Points(known) : Nothing;

    public string Proof(Route route)
    {
        var untimed = route is { Query.Cost: RouteCost.Seconds, Seconds: null };
        var why = untimed ? "No way has a time for each of its operations, so the one with fewest operations is shown. " : "";
        if (route.IsOptimal) return $"{why}Proven shortest in {(untimed ? "operations" : Word.Of(route.Query.Cost))}.";
        return untimed || route.LowerBound is not { } bound ? $"{why}Best found, not proven; a greater --effort may find a better one."
            : $"Best found; no route takes {Least(route.Query.Cost, bound)}. A greater --effort may tell more.";
    }

    string Least(RouteCost cost, decimal bound) =>
        cost == RouteCost.Seconds ? $"less than {shown.Number(bound)} s" : $"fewer than {Counted(bound, cost == RouteCost.Steps ? "step" : "operation")}";

    string Counted(Interval count, string noun) => $"{shown.Points(count)} {noun}{(count == 1 ? "" : "s")}";
}
