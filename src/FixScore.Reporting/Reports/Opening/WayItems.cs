using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>A way as a list: each operation with all that is recorded of it, and where a step ends.</summary>
sealed class WayItems(TeardownRecord record, CultureInfo culture)
{
    readonly RecordTerms terms = new(record, culture);
    readonly Shown shown = new(culture);
    readonly HashSet<string> parts = record.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);

    public Items Of(Way way) => new([.. way.Stops.SelectMany((_, index) => Stop(way.Stops, index))]);

    IEnumerable<Item> Stop(ImmutableArray<Stop> stops, int index)
    {
        var stop = stops[index];
        yield return new($"{AtOnce(stops, index)}{stop.Operation.Id}: {ActionWords.Before(stop.Operation.Action)}{Tools(stop)}; {Time(stop.Operation)}") { Label = terms.Number(index + 1) };
        foreach (var item in Cautions(stop.Operation).Concat(Effects(stop))) yield return item with { Level = 1 };
        if (EndsStep(stops, index)) yield return new($"{shown.Points(Sum(stops.Take(index + 1)))} so far", Tone.Quiet) { Label = "Step ends" };
    }

    IEnumerable<Item> Effects(Stop stop)
    {
        if (!stop.Undone.IsEmpty) yield return new($"undoes {terms.Joints(stop.Undone)}");
        if (!stop.Taken.IsEmpty) yield return new($"{Verb(stop.Operation)} {terms.Parts(stop.Taken)}");
        if (!stop.Operation.Consumes.IsEmpty) yield return new($"uses up {string.Join(", ", stop.Operation.Consumes.Select(Consumable))}");
        if (stop.Operation.Note is { } note) yield return new(RecordTerms.Sentence(note)) { Label = "Note" };
        if (!stop.Operation.Footage.IsEmpty) yield return new(string.Join("; ", stop.Operation.Footage.Select(Place)), Tone.Quiet) { Label = "Footage" };
    }

    // Cautions stand before what they warn of.
    IEnumerable<Item> Cautions(Operation operation)
    {
        if (operation.Caution is { } caution) yield return new(RecordTerms.Sentence(caution), Tone.Mind);
        if (operation.Hazards.Count > 0) yield return new($"hazards: {string.Join(", ", operation.Hazards.Select(RecordTerms.Plainly))}", Tone.Mind);
        if (!operation.Damages.IsEmpty) yield return new($"damages {Things(operation.Damages)}", Tone.Mind);
        foreach (var outcome in operation.Outcomes.Where(each => !each.Result.Is(OutcomeResult.Clean)))
            yield return new($"tried on {outcome.Unit}: {RecordTerms.Words(outcome.Result)}{(outcome.Damages.IsEmpty ? "" : $", harmed {Things(outcome.Damages)}")}", Tone.Mind);
    }

    static string AtOnce(ImmutableArray<Stop> stops, int index) =>
        index > 0 && stops[index].Operation.DirectlyAfter == stops[index - 1].Operation.Id ? "at once, before it cools: " : "";

    string Tools(Stop stop)
    {
        if (!stop.Tools.IsRecorded) return terms.Tools(stop.Tools);
        var others = stop.Operation.OrTools.Prepend(stop.Operation.Tools.AsArray()).Where(each => !each.SequenceEqual(stop.Tools)).Select(each => terms.Tools(EntryList.Of(each)));
        return string.Join(", or ", others.Prepend(terms.Tools(stop.Tools)));
    }

    string Time(Operation operation)
    {
        var wait = operation.WaitSeconds is { } known && known != 0 ? $", waiting {terms.Amount(known, " s")} of it" : "";
        return terms.Seconds(OperationTime.Of(operation)) + wait;
    }

    string Consumable(string id) => RecordTerms.Name(record.Consumables.First(consumable => consumable.Id == id).Name);

    string Things(IEnumerable<string> ids) => string.Join(", ", ids.Select(id => parts.Contains(id) ? terms.Part(id) : id));

    static string Place(Footage piece) => $"{piece.Source}, {piece.Unit}, {Time(piece.From)}\u2013{Time(piece.To)}";

    static string Time(TimeSpan time) => string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}");

    // A step is over where the next operation begins one; the last is over at the end.
    static bool EndsStep(ImmutableArray<Stop> stops, int index) => index == stops.Length - 1 || stops[index + 1].Steps.High > 0;

    static Interval Sum(IEnumerable<Stop> stops) =>
        stops.Aggregate((Interval)0, (sum, stop) => new(sum.Low + stop.Steps.Low, sum.High + stop.Steps.High));

    static string Verb(Operation operation) => (operation.Removes.IsEmpty, operation.Moves.IsEmpty) switch
    {
        (false, true) => "takes out",
        (true, false) => "shifts aside",
        _ => "takes out or shifts aside",
    };
}
