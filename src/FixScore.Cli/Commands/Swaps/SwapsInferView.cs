using System.Collections.Immutable;
using System.Globalization;
using FixScore.Cli.Commands.Routing;
using FixScore.Cli.Terminal;
using FixScore.Records;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>What trials prove as text: units, contexts one by one, what changes between them, the boot lock.</summary>
sealed class SwapsInferView(Canvas canvas, CultureInfo culture)
{
    public void Show(ImmutableArray<InferredRecord> records)
    {
        foreach (var record in records) Show(record);
        canvas.Line("Work on devices can hurt: the command sheet tells the way to each part with its hazards and the usual cautions. Trials with the boot lock can wipe data: save them first.");
    }

    void Show(InferredRecord inferred)
    {
        canvas.Heading(new Names(inferred.Record).Device);
        Units(inferred.Record);
        Inert(inferred.Record);
        canvas.Line();
        if (inferred.Verdicts.Contexts.IsEmpty) Untried(inferred.Record);
        foreach (var context in inferred.Verdicts.Contexts) new ContextView(canvas, context, inferred.SettlingIn(context.Context)).Show();
        new TiesView(canvas).Show(inferred.Ties, PartGroups.Of(inferred.Record));
        new ComparisonView(canvas, culture).Show(inferred.Comparison);
        new LocksView(canvas, culture).Show(inferred.Record, inferred.Locks);
        if (inferred.Posteriors is { } posteriors) new PosteriorView(canvas, culture).Show(posteriors);
    }

    void Units(TeardownRecord record)
    {
        var units = record.Assessment.Units;
        canvas.Line("Units:");
        foreach (var unit in units) canvas.Item(1, "-", string.Join(", ", new[] { $"{unit.Id}: {SourceOf(unit)}", unit.ModelCode, unit.Software }.OfType<string>()));
        var codes = units.Select(unit => unit.ModelCode).OfType<string>().Distinct(StringComparer.Ordinal).Count();
        if (codes > 1) canvas.Item(1, "!", "Units of different model codes are not comparable: their trials count, with care.");
    }

    void Inert(TeardownRecord record)
    {
        var inert = record.Parts.Where(part => part.Inert).Select(part => part.Id).ToArray();
        if (inert.Length > 0) canvas.Item(0, "", $"Cannot carry a code, so never foreign: {string.Join(", ", inert)}.", quiet: true);
    }

    void Untried(TeardownRecord record)
    {
        canvas.Line(record.Swaps.IsRecorded ? "No swap was tried." : "Swap trials are not recorded.");
        canvas.Line();
    }

    static string SourceOf(AssessedUnit unit) =>
        unit.Source.IsUnknown ? "source not recorded" : string.Join(" or ", unit.Source.Stated.Select(Names.Plainly));
}
