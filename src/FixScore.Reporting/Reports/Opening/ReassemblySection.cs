using System.Collections.Immutable;
using System.Globalization;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Blocks;

namespace FixScore.Reporting.Reports;

/// <summary>What differs, in putting the device together, from reversing the way in.</summary>
sealed class ReassemblySection(CultureInfo culture)
{
    /// <summary>The section.</summary>
    /// <param name="source">The record.</param>
    public Section Of(TeardownCase source)
    {
        var record = source.Record;
        ImmutableArray<Block> blocks = record.Operations.Count == 0 && record.Joints.Count == 0
            ? [new Prose("Nothing is recorded of putting the device together.", Tone.Open)]
            : [new Prose("The way in, backwards; only what differs is told here."), new Items([.. Renewed(record), .. Sealing(record), .. Torque(record)]), .. Recorded(record), .. Times(source)];
        return new("Putting it back together", blocks) { Anchor = "reassembly" };
    }

    static IEnumerable<Item> Renewed(TeardownRecord record)
    {
        Joint[] closed = [.. record.Joints.Where(joint => !joint.Integral && joint.Kind != JointKind.Contact)];
        (string Label, Tone Tone, Func<Joint, bool> IsMeant)[] asked =
        [
            ("Renew", Tone.Plain, joint => joint.Reuse.Is(Reuse.Removable)),
            ("Cannot be restored as it was", Tone.Mind, joint => joint.Reuse.Is(Reuse.Neither)),
            ("May have to be renewed", Tone.Plain, joint => joint.Reuse.Stated.Length > 1),
            ("Not recorded whether it can be used again", Tone.Open, joint => joint.Reuse.IsUnknown),
        ];
        return from each in asked let joints = closed.Where(each.IsMeant).Select(joint => joint.Id).ToArray() where joints.Length > 0
               select new Item(string.Join(", ", joints), each.Tone) { Label = each.Label };
    }

    static IEnumerable<Item> Sealing(TeardownRecord record)
    {
        if (record.Device.IngressProtection is { } code)
            yield return new($"{RecordTerms.Name(code)} (IEC 60529) is recorded for the device as sold. Do not promise it unless seals were renewed as the maker says and it was tested.", Tone.Mind) { Label = "Sealing" };
        else if (record.Joints.Any(joint => joint.Kind == JointKind.Gasket))
            yield return new("there are gaskets, but no ingress protection code is recorded; do not promise any.", Tone.Open) { Label = "Sealing" };
    }

    static IEnumerable<Item> Torque(TeardownRecord record)
    {
        if (record.Joints.All(joint => joint.Kind != JointKind.Screw)) yield break;
        var document = record.Documentation.FirstOrDefault(each => each.Subject == DocumentSubject.TorqueValues);
        yield return new(document is null || document.Audience.IsUnknown ? "not recorded whether the maker gives any" : string.Join(" or ", document.Audience.Stated.Select(Says))) { Label = "Torque values" };
    }

    static string Says(Audience audience) => audience switch
    {
        Audience.Public => "given by the maker to everyone",
        Audience.Repairers => "given by the maker to professional repairers",
        Audience.Authorised => "given by the maker to its own network only",
        _ => "looked for, not given",
    };

    IEnumerable<Block> Recorded(TeardownRecord record)
    {
        Operation[] all = [.. record.Operations.Where(operation => operation.Phase == OperationPhase.Reassembly)];
        if (all.Length == 0) yield break;
        var terms = new RecordTerms(record, culture);
        yield return new Prose("Work that is added, for the whole device (what it serves is not recorded):");
        yield return new Items([.. all.SelectMany(operation => Told(operation, record, terms))]);
    }

    static IEnumerable<Item> Told(Operation operation, TeardownRecord record, RecordTerms terms)
    {
        var uses = operation.Consumes.IsEmpty ? "" : $"; uses up {string.Join(", ", operation.Consumes.Select(id => RecordTerms.Name(record.Consumables.First(each => each.Id == id).Name)))}";
        var wait = operation.WaitSeconds is { } known && known != 0 ? $", waiting {terms.Amount(known, " s")} of it" : "";
        yield return new($"{operation.Id}: {ActionWords.Before(operation.Action)}{terms.Tools(operation.Tools)}; {terms.Seconds(OperationTime.Of(operation))}{wait}{uses}");
        if (operation.Caution is { } caution) yield return new(RecordTerms.Sentence(caution), Tone.Mind, 1);
        if (operation.Hazards.Count > 0) yield return new($"hazards: {string.Join(", ", operation.Hazards.Select(RecordTerms.Plainly))}", Tone.Mind, 1);
        if (operation.Note is { } note) yield return new(RecordTerms.Sentence(note), Level: 1) { Label = "Note" };
    }

    // The way back is timed only where each operation of the way in is.
    IEnumerable<Block> Times(TeardownCase source)
    {
        var costs = new RouteCosts(culture);
        var groups = RouteGroup.Of(source, PriorityParts.Of(source.Record).Shown).Where(group => group.IsReachable).ToArray();
        string[] timed = [.. groups.Where(group => group.Route.Way!.ReassemblySeconds is not null).Select(group => $"{Ids(group)} {costs.Minutes(group.Route.Way!.ReassemblySeconds)} min")];
        string[] open = [.. groups.Where(group => group.Route.Way!.ReassemblySeconds is null).Select(Ids)];
        yield return new Items([
            .. timed.Length > 0 ? [new Item(string.Join("; ", timed)) { Label = "Time to put back" }] : Array.Empty<Item>(),
            .. open.Length > 0 ? [new Item(timed.Length == 0 ? "not recorded" : string.Join(", ", open), Tone.Open) { Label = timed.Length == 0 ? "Time to put back" : "Time to put back not recorded for" }] : Array.Empty<Item>()]);
    }

    static string Ids(RouteGroup group) => string.Join(", ", group.Asked.Select(part => part.Id));
}
