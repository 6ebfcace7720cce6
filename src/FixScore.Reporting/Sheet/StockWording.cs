using FixScore.Records;

namespace FixScore.Reporting.Sheet;

/// <summary>What to have ready, in words.</summary>
sealed class StockWording(SheetStock stock, RecordTerms terms)
{
    public IEnumerable<SheetLine> Lines =>
    [
        .. Group("Tools", stock.Tools.Select(Tool).Concat(stock.ToolsAreRecorded ? [] : ["tools of some operations are not recorded"])),
        .. Group("Bits, by the screws they turn", stock.Bits.Select(bit => $"{RecordTerms.Words(bit.Drive)}, thread {terms.Amount(bit.DiameterMm, " mm")}: {string.Join(", ", bit.Joints)}")),
        .. Group("Used up on the way", stock.Consumables.Select(use => $"{terms.Number(use.Count)} x {RecordTerms.Name(use.Consumable.Name)}")),
        .. Group("Used up in reassembly of the whole device", stock.ForReassembly.Select(consumable => RecordTerms.Name(consumable.Name))),
        .. Group("To renew", stock.Renew.Select(renewal => $"{terms.Joint(renewal.Joint)}: {RenewalWording.Says(renewal)}")),
        .. Waits,
    ];

    IEnumerable<SheetLine> Waits => stock.Waits.Length == 0 ? [] : stock.Waits.Select(each =>
            new SheetLine(1, SheetMark.Item, $"operation {terms.Number(each.Number)}, {each.Stop.Operation.Id}: {terms.Amount(each.Stop.Operation.WaitSeconds!.Value, " s")}"))
        .Prepend(new(0, SheetMark.Text, "Longest waits with hands free:"));

    string Tool(Tool tool) =>
        $"{RecordTerms.Name(tool.Name)}, class: {RecordTerms.Words(tool.Class)}{(tool.HeatC is { } heat ? $", {terms.Amount(heat, " \u00B0C")}" : "")}{(tool.Solvent is { } solvent ? $", applies {RecordTerms.Name(solvent)}" : "")}";

    static IEnumerable<SheetLine> Group(string title, IEnumerable<string> items) =>
        items.Select(item => new SheetLine(1, SheetMark.Tick, item)).DefaultIfEmpty(new(1, SheetMark.Text, "none")).Prepend(new(0, SheetMark.Text, title + ":"));
}
