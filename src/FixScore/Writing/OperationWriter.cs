using System.Text.Json;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore.Writing;

static class OperationWriter
{
    public static void Operation(Utf8JsonWriter json, Operation operation)
    {
        json.Required("id", operation.Id);
        json.Word<OperationAction>("action", operation.Action);
        json.Ids("tools", operation.Tools);
        ConditionWriter.ToolSets(json, "orTools", operation.OrTools);
        ConditionWriter.Conditions(json, "after", operation.After);
        json.Text("directlyAfter", operation.DirectlyAfter);
        json.Ids("undoes", operation.Undoes);
        json.Ids("moves", operation.Moves);
        json.Ids("holdsBy", operation.HoldsBy);
        json.Ids("removes", operation.Removes);
        json.Ids("damages", operation.Damages);
        json.Quantity("seconds", operation.Seconds);
        json.Quantity("waitSeconds", operation.WaitSeconds);
        json.Quantity("reassemblySeconds", operation.ReassemblySeconds);
        json.Word<OperationPhase>("phase", operation.Phase == OperationPhase.Disassembly ? null : operation.Phase);
        json.Ids("consumes", operation.Consumes);
        json.Text("caution", operation.Caution);
        json.Words("hazards", operation.Hazards);
        json.OneOf("environment", operation.Environment);
        json.OneOf("skill", operation.Skill);
        json.Entries("footage", operation.Footage, Footage);
        json.Entries("outcomes", operation.Outcomes, Outcome);
        json.Remarks(operation);
    }

    public static void Milestone(Utf8JsonWriter json, Milestone milestone)
    {
        json.Required("id", milestone.Id);
        ConditionWriter.Items(json, "when", milestone.When.OrEmpty());
        json.Remarks(milestone);
    }

    public static void Sequence(Utf8JsonWriter json, Sequence sequence)
    {
        json.Required("id", sequence.Id);
        json.Required("part", sequence.Part);
        json.Word<SequenceAuthor>("by", sequence.By);
        json.Text("unit", sequence.Unit);
        json.Texts("operations", sequence.Operations.OrEmpty());
        json.Remarks(sequence);
    }

    static void Footage(Utf8JsonWriter json, Footage footage)
    {
        json.Required("evidence", footage.Source);
        json.Required("unit", footage.Unit);
        json.Timecode("from", footage.From);
        json.Timecode("to", footage.To);
        json.Text("note", footage.Note);
    }

    static void Outcome(Utf8JsonWriter json, OperationOutcome outcome)
    {
        json.Required("unit", outcome.Unit);
        json.AnyOf("result", outcome.Result);
        json.Ids("damages", outcome.Damages);
        json.Remarks(outcome);
    }
}
