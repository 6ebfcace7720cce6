using System.Text.Json;
using FixScore.Cli.Files;
using FixScore.Disassembly;
using FixScore.Records;
using FixScore.Reporting.Sheet;

namespace FixScore.Cli.Commands.Sheet;

/// <summary>A bench sheet as JSON.</summary>
static class SheetJson
{
    public static byte[] Of(SheetPlan plan) => JsonOutput.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("record", plan.Record.Id);
        json.Each("parts", plan.Parts, Part);
        json.Words("cautions", plan.Cautions);
        json.WriteStartObject("ready");
        StockJson.Members(json, plan.Ready);
        json.WriteEndObject();
        json.Words("before", plan.Before);
        json.Each("labels", plan.Labels, Label);
        json.Each("operations", plan.Operations, Operation);
        json.WriteBoolean("shortest", plan.IsShortest);
        json.Each("screws", plan.Screws, Screw);
        json.Each("reassembly", plan.Reassembly, Return);
        json.Words("alsoRecorded", [.. plan.AlsoRecorded.Select(operation => operation.Id)]);
        Sealing(json, plan.Sealing);
        json.Words("after", plan.After);
        json.WriteEndObject();
    });

    public static void Each<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> members)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            members(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A quantity as in records: a number, or an object with the ends that are known; <c>null</c> when none is.</summary>
    public static void Size(this Utf8JsonWriter json, string name, Quantity? size)
    {
        if (size is not { } known || known == default) json.WriteNull(name);
        else if (known.IsExact) json.Exact(name, known.Min);
        else
        {
            json.WriteStartObject(name);
            if (known.Min is { } min) json.Exact("min", min);
            if (known.Max is { } max) json.Exact("max", max);
            json.WriteEndObject();
        }
    }

    static void Part(Utf8JsonWriter json, SheetPart part)
    {
        json.WriteString("part", part.Part.Id);
        json.WriteBoolean("onSheet", part.IsOnSheet);
        if (part.Reachability == Reachability.Unknown) json.WriteNull("reachable");
        else json.WriteBoolean("reachable", part.Reachability == Reachability.Reachable);
        if (part.Why is { } why) json.WriteString("why", why.Text);
    }

    static void Label(Utf8JsonWriter json, SheetLabel label)
    {
        json.WriteString("unit", label.Unit);
        json.WriteString("part", label.Part);
        json.WriteString("label", label.Text);
    }

    static void Operation(Utf8JsonWriter json, SheetOperation each)
    {
        var operation = each.Stop.Operation;
        json.WriteNumber("number", each.Number);
        json.WriteString("operation", operation.Id);
        json.WriteString("action", Word.Of(operation.Action));
        if (each.Stop.Tools.IsRecorded) json.Words("tools", each.Stop.Tools.AsArray());
        else json.WriteNull("tools");
        json.Words("joints", each.Stop.Undone);
        json.Words("parts", each.Stop.Taken);
        json.Amount("seconds", OperationTime.Of(operation));
        json.Size("waitSeconds", operation.WaitSeconds);
        json.WriteBoolean("atOnce", each.IsAtOnce);
        json.Words("hazards", [.. operation.Hazards.Select(Word.Of)]);
        if (operation.Caution is { } caution) json.WriteString("caution", caution);
    }

    static void Screw(Utf8JsonWriter json, SheetScrew each)
    {
        json.WriteNumber("operation", each.Number);
        json.WriteString("joint", each.Joint.Id);
        json.WriteString("where", each.Joint.Where);
        json.Words("drive", each.Joint.Screw?.Drive.Stated ?? []);
        json.Size("diameterMm", each.Joint.Screw?.DiameterMm);
        json.Size("lengthMm", each.Joint.Screw?.LengthMm);
        json.Size("count", each.Joint.Count);
        json.Words("keepApartFrom", each.KeepApartFrom);
    }

    static void Return(Utf8JsonWriter json, SheetReturn each)
    {
        json.WriteNumber("undoes", each.Number);
        json.Words("parts", each.Stop.Taken);
        json.Words("joints", each.Stop.Undone);
        json.Amount("seconds", OperationTime.Known(each.Stop.Operation.ReassemblySeconds));
        json.Each("renew", each.Renew, StockJson.Renewal);
    }

    static void Sealing(Utf8JsonWriter json, SheetSealing sealing)
    {
        json.WriteStartObject("sealing");
        json.WriteString("ingressProtection", sealing.IngressProtection);
        json.Words("opened", [.. sealing.Opened.Select(joint => joint.Id)]);
        json.WriteEndObject();
    }
}
