using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Reading.Records;

static class OperationReader
{
    public static Operation Operation(ObjectReader operation) => operation.Entry(new Operation
    {
        Id = operation.Slug("id"),
        Action = operation.Word<OperationAction>("action"),
        Tools = operation.IdList("tools"),
        OrTools = operation.SlugLists("orTools"),
        After = operation.Conditions("after"),
        DirectlyAfter = operation.SlugOrNull("directlyAfter"),
        Undoes = operation.Ids("undoes"),
        Moves = operation.Ids("moves"),
        HoldsBy = operation.Ids("holdsBy"),
        Removes = operation.Ids("removes"),
        Damages = operation.Ids("damages"),
        Seconds = operation.Quantity("seconds"),
        WaitSeconds = operation.Quantity("waitSeconds"),
        ReassemblySeconds = operation.Quantity("reassemblySeconds"),
        Phase = operation.WordOrNull<OperationPhase>("phase") ?? OperationPhase.Disassembly,
        Consumes = operation.Ids("consumes"),
        Caution = operation.TextOrNull("caution"),
        Hazards = operation.WordList<Hazard>("hazards"),
        Environment = operation.OneOf<WorkEnvironment>("environment"),
        Skill = operation.OneOf<Skill>("skill"),
        Footage = operation.Objects("footage", Footage).OrEmpty(),
        Outcomes = operation.Objects("outcomes", Outcome).OrEmpty(),
    });

    public static Milestone Milestone(ObjectReader milestone) => milestone.Entry(new Milestone
    {
        Id = milestone.Slug("id"),
        When = milestone.Conditions("when", required: true),
    });

    public static Sequence Sequence(ObjectReader sequence) => sequence.Entry(new Sequence
    {
        Id = sequence.Slug("id"),
        Part = sequence.Slug("part"),
        By = sequence.Word<SequenceAuthor>("by"),
        Unit = sequence.SlugOrNull("unit"),
        Operations = sequence.SlugList("operations", required: true).OrEmpty(),
    });

    // The member 'evidence' of a piece of footage is the one id it is cut from, not a list.
    static Footage Footage(ObjectReader footage)
    {
        var piece = new Footage
        {
            Source = footage.Slug("evidence"),
            Unit = footage.Slug("unit"),
            From = footage.Timecode("from"),
            To = footage.Timecode("to"),
            Note = footage.TextOrNull("note"),
        };
        if (piece.From > piece.To) footage.Report("footage-backwards", "The footage runs from {from} back to {to}.", "Swap the times, or correct one.",
            ("from", piece.From.ToString("c")), ("to", piece.To.ToString("c")));
        return piece;
    }

    static OperationOutcome Outcome(ObjectReader outcome) => outcome.Entry(new OperationOutcome
    {
        Unit = outcome.Slug("unit"),
        Result = outcome.OneOf<OutcomeResult>("result", required: true),
        Damages = outcome.Ids("damages"),
    });
}
