using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>Short marks for the tools of several ways, and what they stand for.</summary>
sealed class ToolKey(TeardownRecord record, ImmutableArray<Way> ways, RecordTerms terms)
{
    const string Unknown = "?";
    const int Letters = 26;

    readonly ImmutableArray<Tool> tools = [.. record.Tools.Where(tool => ways.Any(way => way.Tools.Contains(tool.Id)))];

    /// <summary>The tools of a way, in the order in which they are first taken up.</summary>
    public string Marks(Way way) =>
        string.Join(' ', way.Tools.Select(id => Mark(tools.IndexOf(tools.First(tool => tool.Id == id)))).Concat(HasUnknown(way) ? [Unknown] : []).DefaultIfEmpty("by hand"));

    /// <summary>What the marks stand for.</summary>
    public Items Legend => new(
    [
        .. tools.Select((tool, index) => new Item($"{RecordTerms.Name(tool.Name)}{Heat(tool)}{Solvent(tool)}; {Had(tool)}") { Label = Mark(index) }),
        .. ways.Any(HasUnknown) ? [new Item("tools of some operation are not recorded", Tone.Open) { Label = Unknown }] : Array.Empty<Item>(),
    ]);

    string Heat(Tool tool) => tool.HeatC is { } heat ? $", {terms.Amount(heat, " \u00B0C")}" : "";

    static string Solvent(Tool tool) => tool.Solvent is { } solvent ? $", applies {RecordTerms.Name(solvent)}" : "";

    static string Had(Tool tool)
    {
        var supplied = tool.SuppliedWith.Select(each => each == Tool.Product ? "comes with the device" : $"comes with the spare of {each}");
        var known = tool.Class.IsUnknown ? "class not recorded" : string.Join(" or ", tool.Class.Stated.Select(Says));
        return string.Join(", ", supplied.Prepend(known));
    }

    static string Says(ToolClass known) => known switch
    {
        ToolClass.Basic => "basic tool",
        ToolClass.Commercial => "on general sale",
        ToolClass.Specialised => "on sale for the trade",
        _ => "proprietary, not on sale",
    };

    static bool HasUnknown(Way way) => way.Stops.Any(stop => !stop.Tools.IsRecorded);

    string Mark(int index) => tools.Length > Letters ? (index + 1).ToString(CultureInfo.InvariantCulture) : $"{(char)('a' + index)}";
}
