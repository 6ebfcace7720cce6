using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;
using FixScore.Records;
using FixScore.Reporting;
using FixScore.Reporting.Html;
using FixScore.Reporting.Sheet;
using FixScore.Reporting.Tests;

namespace FixScore.Browser.Tests;

/// <summary>The pages that are looked at: a line each.</summary>
static class Pages
{
    static readonly string LongWord = new('x', 300);

    public static (string Name, Func<byte[]> Render)[] All { get; } =
    [
        ("demo", () => Summary([.. Bench.Demo])),
        ("long-names", () => Summary(Bench.Judge("larkfield-slate-2", "bench-balanced", Lengthen))),
        ("sheet", () => Sheet(Bench.Judge("larkfield-slate-2", "bench-balanced"))),
        ("sheet-long-names", () => Sheet(Bench.Judge("larkfield-slate-2", "bench-balanced", Lengthen))),
    ];

    static readonly ConcurrentDictionary<string, byte[]> Rendered = new(StringComparer.Ordinal);

    public static TheoryData<string> Names => [.. All.Select(page => page.Name)];

    /// <summary>A telephone (and 1280 pixels at four times the size, WCAG 2.2 success criterion 1.4.10), a desk, a wall.</summary>
    public static int[] Widths { get; } = [320, 1024, 3840];

    public static byte[] Render(string name) => Rendered.GetOrAdd(name, _ => All.Single(page => page.Name == name).Render());

    public static TheoryData<string, int> At(params int[] widths)
    {
        var cases = new TheoryData<string, int>();
        foreach (var (name, _) in All)
            foreach (var width in widths) cases.Add(name, width);
        return cases;
    }

    static byte[] Summary(params Judgement[] judgements) =>
        SummaryPage.Render("Four slate tablets before a tender", "A workshop took two units of each tablet apart and put them together again.", [.. judgements], CultureInfo.InvariantCulture);

    static byte[] Sheet(Judgement judgement) =>
        SheetPage.Render(SheetPlan.Of(new RecordCase(judgement.Record), judgement.Record.Parts.AsArray()), CultureInfo.InvariantCulture);

    // Names of one word that no line can hold, wherever a record has names.
    static void Lengthen(JsonNode record)
    {
        (record["device"]!["maker"], record["device"]!["model"], record["assessment"]!["assessor"]) = (LongWord, LongWord, LongWord);
        foreach (var part in record["parts"]!.AsArray()) part!["name"] = LongWord;
        foreach (var evidence in record["evidence"]!.AsArray()) evidence!["ref"] = LongWord;
    }
}
