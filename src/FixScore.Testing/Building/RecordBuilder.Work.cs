using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

public sealed partial class RecordBuilder
{
    /// <summary>Adds a tool; its name is its id.</summary>
    public RecordBuilder Tool(string id, OneOf<ToolClass> @class, Func<Tool, Tool>? configure = null)
    {
        var tool = Changed(new Tool { Id = id, Name = id, Class = @class }, configure);
        return With(record => record with { Tools = Plus(record.Tools, tool) });
    }

    /// <summary>Adds something that is used up; its name is its id.</summary>
    public RecordBuilder Consumable(string id, Func<Consumable, Consumable>? configure = null)
    {
        var consumable = Changed(new Consumable { Id = id, Name = id }, configure);
        return With(record => record with { Consumables = Plus(record.Consumables, consumable) });
    }

    /// <summary>Adds an operation.</summary>
    /// <param name="id">Its id, a slug.</param>
    /// <param name="action">What is done.</param>
    /// <param name="tools">Ids of the tools in use together: <c>[]</c> for bare hands, unknown when left out.</param>
    /// <param name="undoes">Ids of the joints it undoes.</param>
    /// <param name="removes">Ids of the parts it takes out.</param>
    /// <param name="after">What must hold before.</param>
    /// <param name="seconds">How long it takes; unknown when left out.</param>
    /// <param name="configure">Changes the operation.</param>
    public RecordBuilder Operation(
        string id, OperationAction action, EntryList<string> tools = default, ImmutableArray<string> undoes = default,
        ImmutableArray<string> removes = default, ImmutableArray<Condition> after = default, Quantity? seconds = null,
        Func<Operation, Operation>? configure = null)
    {
        var operation = new Operation
        {
            Id = id, Action = action, Tools = tools, Seconds = seconds,
            Undoes = OrNone(undoes), Removes = OrNone(removes), After = OrNone(after),
        };
        var changed = Changed(operation, configure);
        return With(record => record with { Operations = Plus(record.Operations, changed) });
    }

    /// <summary>Adds a name for a state in which all of the conditions hold.</summary>
    public RecordBuilder Milestone(string id, params ImmutableArray<Condition> when) =>
        With(record => record with { Milestones = Plus(record.Milestones, new() { Id = id, When = when }) });

    /// <summary>Adds a way to a part that was published or filmed.</summary>
    public RecordBuilder Sequence(string id, string part, SequenceAuthor by, params ImmutableArray<string> operations) =>
        With(record => record with
        {
            Sequences = Plus(record.Sequences, new() { Id = id, Part = part, By = by, Operations = operations }),
        });
}
