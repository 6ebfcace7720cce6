using System.Globalization;
using FixScore.Disassembly;

namespace FixScore.Reporting.Reports;

/// <summary>What a route costs and how far that is proven, in words.</summary>
sealed class RouteCosts(CultureInfo culture)
{
    const decimal SecondsOfMinute = 60;

    // Below this a decimal of a minute says too little.
    const decimal ShortSeconds = 6;

    readonly Shown shown = new(culture);

    public string Number(Interval number) => shown.Points(number);

    public string Steps(Interval steps) => $"{shown.Points(steps)} {(steps == 1 ? "step" : "steps")}";

    public string Minutes(Interval? seconds) => seconds is { } known ? shown.Points(InMinutes(known)) : RecordTerms.NotRecorded;

    public static Interval InMinutes(Interval seconds)
    {
        var decimals = seconds.Low < ShortSeconds ? 2 : 1;
        return new(Rounded(seconds.Low), Rounded(seconds.High));
        decimal Rounded(decimal each) => decimal.Round(each / SecondsOfMinute, decimals, MidpointRounding.AwayFromZero);
    }

    public string Of(Way way) =>
        $"{Steps(way.Steps)}, {way.Stops.Length.ToString(culture)} {(way.Stops.Length == 1 ? "operation" : "operations")}, {(way.Seconds is null ? "time not recorded" : $"{Minutes(way.Seconds)} min")}";

    /// <summary>A word for tables.</summary>
    public string Proof(Route route) => route.IsOptimal ? "yes" : route.LowerBound is { } bound ? $"no; {shown.Number(bound)} or more" : "no";

    public string ProofInFull(Route route) => route.IsOptimal ? "Proven: no route has fewer steps."
        : route.LowerBound is { } bound ? $"Best found; proven is only that no route has fewer than {Steps(bound)}." : "Best found, not proven.";
}
