using System.Collections.Immutable;
using FixScore.Records;
using FixScore.Requirements.Judging;

namespace FixScore.Requirements.Batteries;

/// <summary>What Article 11(1) asks of every operation on the way to the battery.</summary>
sealed class RemovalRule(TeardownRecord record, PartGroup battery)
{
    readonly Dictionary<string, Tool> tools = record.Tools.ToDictionary(tool => tool.Id, StringComparer.Ordinal);

    public ImmutableArray<Aspect> Aspects =>
    [
        new("battery-harmed", operation => !operation.Damages.Any(battery.Holds), _ => "harms the battery"),
        new("heat", operation => operation.Action is OperationAction.Heat or OperationAction.Desolder ? false : Tools(operation, tool => tool.HeatC is null), Seen),
        new("solvent", operation => UsesSolvent(operation) ? false : Tools(operation, tool => tool.Solvent is null), Seen),
        new("tool", operation => Tools(operation, OnSale), Seen),
        new("tools-together", operation => Tools(operation, tool => tool is { HeatC: null, Solvent: null } ? OnSale(tool) : false), Seen),
    ];

    // The set of tools has to do without heat, without solvent and be on sale at once: the last aspect asks for all three.
    bool? Tools(Operation operation, Func<Tool, bool?> allowed)
    {
        return Known.Any([operation.Tools.IsRecorded ? All(operation.Tools.AsArray()) : null, .. operation.OrTools.Select(All)]);

        bool? All(ImmutableArray<string> set) => Known.All(set.Select(id => allowed(tools[id])));
    }

    static bool? OnSale(Tool tool) => Known.Any(
        tool.Class.Fits(each => each is ToolClass.Basic or ToolClass.Commercial),
        tool.SuppliedWith.Contains(Tool.Product) ? tool.Class.Fits(each => each is not ToolClass.Proprietary) : false);

    bool UsesSolvent(Operation operation) => operation.Action == OperationAction.ApplySolvent
        || operation.Consumes.Any(id => record.Consumables.Any(consumable => consumable.Id == id && consumable.Kind == "solvent"));

    string Seen(Operation operation) => operation.Tools.IsRecorded
        ? string.Join(", ", operation.Tools.Select(id => Seen(tools[id])).Prepend(Word.Of(operation.Action)))
        : "tools unknown";

    static string Seen(Tool tool) =>
        $"{tool.Id}: {Shown.Of(tool.Class)}{(tool.HeatC is null ? "" : ", heats")}{(tool.Solvent is null ? "" : ", solvent")}{(tool.SuppliedWith.Contains(Tool.Product) ? ", comes with the product" : "")}";
}
