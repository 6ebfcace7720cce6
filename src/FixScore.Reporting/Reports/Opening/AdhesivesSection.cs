using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>What is glued or sealed, how it opens, and what cannot be used again.</summary>
sealed class AdhesivesSection(CultureInfo culture)
{
    readonly Shown shown = new(culture);

    /// <summary>The section.</summary>
    /// <param name="source">The record.</param>
    public Section Of(TeardownCase source)
    {
        var record = source.Record;
        Joint[] bonds = [.. record.Joints.Where(IsBond)];
        Joint[] others = [.. record.Joints.Where(joint => !IsBond(joint) && !joint.Integral && !joint.Reuse.IsUnknown && !joint.Reuse.Is(Reuse.Reusable))];
        ImmutableArray<Block> blocks = !record.Joints.IsRecorded ? [new Prose("What is glued or sealed is not recorded.", Tone.Open)]
            : [.. Bonds(bonds, new BondWording(source, new(record, culture))), .. Others(source, others), .. Consumables(record)];
        return new("Adhesives and what has to be renewed", blocks) { Anchor = "adhesives" };
    }

    // What holds by sticking or seals, whatever it is called.
    static bool IsBond(Joint joint) => joint.Kind is JointKind.Adhesive or JointKind.Tape or JointKind.Gasket || joint.Adhesive is not null;

    static IEnumerable<Block> Bonds(Joint[] bonds, BondWording wording)
    {
        if (bonds.Length == 0) yield return new Prose("The record lists no adhesive, tape or gasket.");
        yield return new Grid("Adhesives, tapes and gaskets",
            ["Joint", "Kind", "Between", "Opens by", "Afterwards", "New one with a spare", new("Measured") { IsExtra = true }],
            [.. bonds.Select(joint => (ImmutableArray<GridCell>)[joint.Id, wording.Kind(joint), BondWording.Where(joint), wording.Opens(joint), BondWording.Afterwards(joint), wording.Supplied(joint), wording.Measured(joint)])]);
        yield return new Items([.. bonds.Where(joint => joint.Note is not null).Select(joint => new Item($"{joint.Id}: {RecordTerms.Sentence(joint.Note!)}"))]);
    }

    IEnumerable<Block> Others(TeardownCase source, Joint[] others)
    {
        if (others.Length == 0) yield break;
        var (terms, wording) = (new RecordTerms(source.Record, culture), new BondWording(source, new(source.Record, culture)));
        yield return new Prose("Of other joints, these cannot simply be closed again:");
        yield return new Items([.. others.Select(joint => new Item($"{terms.Joint(joint)}: {BondWording.Afterwards(joint)}{(joint.Reuse.MayBe(Reuse.Removable) ? $"; new one with a spare: {wording.Supplied(joint)}" : "")}"))]);
    }

    IEnumerable<Block> Consumables(TeardownRecord record)
    {
        if (!record.Consumables.IsRecorded) yield return new Prose("What work uses up is not recorded.", Tone.Open);
        if (record.Consumables.Count == 0) yield break;
        yield return new Prose("Used up in work on the device:");
        yield return new Items([.. record.Consumables.Select(each => new Item($"{RecordTerms.Name(each.Name)}{Kind(each)}, {Price(each.Price, new(record, culture))}; {Uses(record, each)}"))]);
    }

    static string Kind(Consumable each) => each.Kind is { } kind ? $" ({RecordTerms.Name(kind)})" : "";

    string Price(Price? price, RecordTerms terms) => price is { } known
        ? $"{(known.Amount.IsExact ? known.Amount.Min!.Value.ToString("0.00", culture) : terms.Amount(known.Amount))} {RecordTerms.Name(known.Currency)}{Tax(known)}" : "price not recorded";

    static string Tax(Price price) => price.TaxIncluded switch { true => " with tax", false => " without tax", _ => "" };

    string Uses(TeardownRecord record, Consumable each)
    {
        string[] Of(OperationPhase phase) => [.. record.Operations.Where(operation => operation.Phase == phase && operation.Consumes.Contains(each.Id)).Select(operation => operation.Id)];
        var (opening, closing) = (Of(OperationPhase.Disassembly), Of(OperationPhase.Reassembly));
        return opening.Length + closing.Length == 0 ? "no operation says for what"
            : string.Join(", ", new[] { Told(opening, "in opening"), Told(closing, "in putting back") }.OfType<string>());
    }

    string? Told(string[] operations, string when) => operations.Length == 0 ? null
        : operations.Length > 4 ? $"{when} {shown.Number(operations.Length)} times" : $"{when} ({string.Join(", ", operations)})";
}
