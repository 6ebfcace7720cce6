using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Terminal;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Cli.Commands.Routing;

/// <summary>A way as a numbered list: each operation with its tools, what it undoes and takes away, and where a step ends.</summary>
sealed class WayView(Canvas canvas, CultureInfo culture, TeardownRecord record)
{
    readonly RouteText text = new(culture);
    readonly Names names = new(record);

    public void Show(Way way)
    {
        var (width, steps) = (way.Stops.Length.ToString(CultureInfo.InvariantCulture).Length, new Interval(0, 0));
        foreach (var (index, stop) in way.Stops.Index())
        {
            var number = (index + 1).ToString(CultureInfo.InvariantCulture).PadLeft(width);
            canvas.Item(1, $"{number}.", $"{stop.Operation.Id}: {Names.Plainly(stop.Operation.Action)}, {Tools(stop)}");
            foreach (var (mark, text) in Details(stop)) canvas.Item(3, mark, text);
            steps = new(steps.Low + stop.Steps.Low, steps.High + stop.Steps.High);
            if (EndsStep(way.Stops, index)) canvas.Item(3, "--", $"step ends; {text.Steps(steps)} so far", quiet: true);
        }
    }

    // A step is over where the next operation begins one; the last is over at the end.
    static bool EndsStep(ImmutableArray<Stop> stops, int index) => index == stops.Length - 1 || stops[index + 1].Steps.High > 0;

    string Tools(Stop stop) => !stop.Tools.IsRecorded ? "tools not recorded"
        : stop.Tools.Count == 0 ? "by hand"
        : $"with {string.Join(" and ", stop.Tools.Select(names.Tool))}";

    IEnumerable<(string Mark, string Text)> Details(Stop stop)
    {
        if (!stop.Undone.IsEmpty) yield return ("", $"undoes {string.Join(", ", record.Joints.Where(joint => stop.Undone.Contains(joint.Id)).Select(Names.Joint))}");
        if (!stop.Taken.IsEmpty) yield return ("", $"{Verb(stop.Operation)} {names.Things(stop.Taken)}");
        if (OperationTime.Of(stop.Operation) is { } time) yield return ("", $"takes {text.Time(time)}{Wait(stop.Operation)}");
        if (!stop.Operation.Damages.IsEmpty) yield return ("!", $"damages {names.Things(stop.Operation.Damages)}");
        if (stop.Operation.Hazards.Count > 0) yield return ("!", $"hazards: {string.Join(", ", stop.Operation.Hazards.Select(Names.Plainly))}");
        if (stop.Operation.Caution is { } caution) yield return ("!", caution);
    }

    string Wait(Operation operation) => operation.WaitSeconds is { Max: { } most and > 0 } ? $", of these {text.Number(most)} s at most waiting with hands free" : "";

    static string Verb(Operation operation) => (operation.Removes.IsEmpty, operation.Moves.IsEmpty) switch
    {
        (false, true) => "takes out",
        (true, false) => "shifts aside",
        _ => "takes out or shifts aside",
    };
}
