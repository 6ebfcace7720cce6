using System.Collections.Immutable;
using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>What is recorded of a bond or seal, in words for the cells of a table.</summary>
sealed class BondWording(TeardownCase source, RecordTerms terms)
{
    readonly TeardownRecord record = source.Record;

    public static string Where(Joint joint) => string.Join(" to ", joint.Joins) + (joint.Where is { } where ? $"; {RecordTerms.Name(where)}" : "");

    public string Kind(Joint joint)
    {
        var type = joint.Adhesive is { Type.IsUnknown: false } adhesive ? $", {RecordTerms.Words(adhesive.Type)}" : joint.Kind == JointKind.Adhesive ? ", type not recorded" : "";
        return (joint.Count == 1 ? "" : $"{terms.Amount(joint.Count)} x ") + RecordTerms.Plainly(joint.Kind) + type;
    }

    /// <summary>How it was opened: each operation that undoes it, with the heat or solvent that goes before.</summary>
    public string Opens(Joint joint)
    {
        if (joint.Integral) return "not meant to be opened";
        string[] ways = [.. record.Operations.Where(operation => operation.Phase == OperationPhase.Disassembly && operation.Undoes.Contains(joint.Id)).Select(Opening).Distinct(StringComparer.Ordinal)];
        return ways.Length > 0 ? string.Join("; or ", ways) : record.Operations.Count > 0 ? "no operation opens it" : RecordTerms.NotRecorded;
    }

    string Opening(Operation operation)
    {
        var before = operation.DirectlyAfter is { } id && record.Operations.FirstOrDefault(each => each.Id == id) is { } first ? Action(first) + ", then " : "";
        var harm = operation.Damages.IsEmpty ? "" : $", with damage to {string.Join(", ", operation.Damages)}";
        return before + Action(operation) + harm;
    }

    string Action(Operation operation)
    {
        var tools = record.Tools.Where(tool => operation.Tools.Contains(tool.Id)).ToArray();
        string[] with = [.. tools.Select(tool => tool.HeatC is { } heat ? terms.Amount(heat, " \u00B0C") : tool.Solvent is { } solvent ? RecordTerms.Name(solvent) : null).OfType<string>()];
        return RecordTerms.Plainly(operation.Action) + (with.Length > 0 ? $" ({string.Join(", ", with)})" : "");
    }

    /// <summary>What was measured of its strength.</summary>
    public string Measured(Joint joint)
    {
        if (joint.Adhesive is not { } bond) return RecordTerms.NotRecorded;
        (string Name, Quantity? Amount, string Unit)[] all =
            [("peel ", bond.PeelNPer25Mm, " N per 25 mm"), ("shear ", bond.ShearMPa, " MPa"), ("", bond.WidthMm, " mm wide"), ("", bond.AreaMm2, " mm\u00B2"), ("softens at ", bond.SoftensAtC, " \u00B0C")];
        return string.Join(", ", all.Where(each => each.Amount is not null).Select(each => each.Name + terms.Amount(each.Amount!.Value, each.Unit)).DefaultIfEmpty(RecordTerms.NotRecorded));
    }

    /// <summary>What undoing leaves of it.</summary>
    public static string Afterwards(Joint joint) => joint.Reuse.IsUnknown ? RecordTerms.NotRecorded : string.Join(" or ", joint.Reuse.Stated.Select(reuse => reuse switch
    {
        Reuse.Reusable => "use again",
        Reuse.Removable => "renew",
        _ => "cannot be restored as it was",
    }));

    /// <summary>Whether spares of the parts that it holds bring a new one; parts that carry no code are asked about only when there are no others.</summary>
    public string Supplied(Joint joint)
    {
        if (joint.Integral || !joint.Reuse.MayBe(Reuse.Removable)) return "-";
        Part[] held = [.. record.Parts.Where(part => joint.Joins.Contains(part.Id))];
        Part[] asked = held.Any(part => !part.Inert) ? [.. held.Where(part => !part.Inert)] : held;
        var levels = asked.Select(part => (part.Id, Levels: FastenerLevels.Of(source, part.Id, joint))).ToLookup(each => Says(each.Levels), each => each.Id);
        return string.Join("; ", ((string[])["yes, with", "no, not with", "not recorded for"]).Where(levels.Contains).Select(words => $"{words} {string.Join(", ", levels[words])}"));
    }

    static string Says(OneOf<FastenerLevel> levels) => (levels.Possible().Contains(FastenerLevel.Resupplied), levels.Possible().Contains(FastenerLevel.Removable)) switch
    {
        (true, false) => "yes, with",
        (false, true) => "no, not with",
        _ => "not recorded for",
    };
}
