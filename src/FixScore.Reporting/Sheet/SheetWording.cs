using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>Puts a plan into words: nine sections, always all of them and in the same order.</summary>
sealed class SheetWording(SheetPlan plan, CultureInfo culture)
{
    readonly RecordTerms terms = new(plan.Record, culture);

    public SheetDocument Document => new($"Bench sheet: {terms.Device}", [.. Introduction()],
    [
        new("1. Cautions first", [.. plan.Cautions.Select(caution => new SheetLine(0, SheetMark.Mind, caution))]),
        new("2. Have ready", [.. new StockWording(plan.Ready, terms).Lines]),
        new("3. Check before", [.. Checks(plan.Before)]),
        new("4. Labels", [.. Labels()]),
        new("5. Operations", [.. new OperationWording(plan, terms).Lines]),
        Screws(),
        new("7. Reassembly, in reverse", [.. new ReassemblyWording(plan, terms).Lines]),
        new("8. What it costs in sealing", [.. Sealing()]),
        new("9. Check after", [.. Checks(plan.After)]),
    ]);

    IEnumerable<SheetLine> Introduction()
    {
        var on = plan.Parts.Where(part => part.IsOnSheet).Select(part => part.Part.Id).ToArray();
        yield return Text(on.Length == 0 ? "None of the parts asked for can be freed." : $"Frees {terms.Parts(on)}.");
        foreach (var left in plan.Parts.Where(part => !part.IsOnSheet)) yield return new(0, SheetMark.Item, $"Left out: {terms.Part(left.Part.Id)}: {Why(left)}");
    }

    string Why(SheetPart left) => left.Why is { } why ? RecordTerms.Sentence(why.ToString(culture)) : "it cannot be freed without damage along with the others; ask for it alone.";

    static IEnumerable<SheetLine> Checks(IEnumerable<string> checks) =>
        checks.Select(check => new SheetLine(0, SheetMark.Tick, check)).Prepend(Text("Common practice, no source. Note what already fails."));

    IEnumerable<SheetLine> Labels()
    {
        yield return Text("Put the label on the part's inert side; never on contacts, vents, or the pull tabs of cells.");
        if (plan.Record.Assessment.Units.Count == 0) yield return Text("The record names no units: label by part.");
        foreach (var part in plan.Labels.GroupBy(label => label.Part))
            yield return new(0, SheetMark.Tick, $"{terms.Part(part.Key)}: {string.Join(", ", part.Select(label => label.Text))}");
    }

    SheetSection Screws() => new("6. Screw plan", [Text(plan.Screws.IsEmpty ? "No screws come out." : "One compartment for each row.")])
    {
        Columns = plan.Screws.IsEmpty ? [] : ["After", "Joint", "Where", "Drive", "Diameter", "Length", "Count"],
        Rows = [.. plan.Screws.Select(Row)],
        Below = [.. plan.Screws.Where(each => !each.KeepApartFrom.IsEmpty).Select(each => new SheetLine(0, SheetMark.Mind,
            $"{each.Joint.Id}: same drive and diameter as {string.Join(", ", each.KeepApartFrom)}, another length or not known to be the same. Do not mix: a screw that is too long can pierce a cell, a board or a display."))],
    };

    ImmutableArray<string> Row(SheetScrew each) =>
    [
        $"{terms.Number(each.Number)}", each.Joint.Id, each.Joint.Where is { } where ? RecordTerms.Name(where) : RecordTerms.NotRecorded,
        each.Joint.Screw is { } screw ? RecordTerms.Words(screw.Drive) : RecordTerms.NotRecorded, Size(each.Joint.Screw?.DiameterMm), Size(each.Joint.Screw?.LengthMm), terms.Amount(each.Joint.Count),
    ];

    string Size(Quantity? size) => size is { } known ? terms.Amount(known, " mm") : RecordTerms.NotRecorded;

    IEnumerable<SheetLine> Sealing()
    {
        yield return Text("Ingress protection is not restored by a gasket or adhesive that is used again.");
        yield return Text(plan.Sealing.IngressProtection is { } code
            ? $"Recorded for the device as sold: {RecordTerms.Name(code)} (IEC 60529). Do not promise it after the work unless seals were renewed as the maker says and it was tested."
            : "No ingress protection code is recorded.");
        if (plan.Sealing.Opened.IsEmpty) yield return Text("No gasket, adhesive or tape is opened.");
        foreach (var joint in plan.Sealing.Opened) yield return new(0, SheetMark.Item, $"opened: {terms.Joint(joint)}{(joint.Where is { } where ? $", {RecordTerms.Name(where)}" : "")}");
    }

    static SheetLine Text(string text) => new(0, SheetMark.Text, text);
}
