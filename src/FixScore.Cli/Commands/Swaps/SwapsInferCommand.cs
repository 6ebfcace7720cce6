using System.Collections.Immutable;

namespace FixScore.Cli.Commands.Swaps;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>swaps infer RECORD...</c>: which parts trials tie to the main board, and which they clear.</summary>
sealed class SwapsInferCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records; - for standard input.", Arity = ArgumentArity.OneOrMore };

    public SwapsInferCommand() : base("infer", "Tells which parts trials tie to the main board and which they clear; exits with 1 when trials contradict each other.",
        "swaps infer slate-2.json", "swaps infer slate-2.json slate-3.json --json") => Add(records);

    public override int Run(CommandSession session)
    {
        var read = session.Parsed.GetValue(records)!.Select(session.ReadRecord).ToArray();
        if (read.Any(document => document is null)) return ExitCode.InvalidInput;
        ImmutableArray<InferredRecord> inferred = [.. read.Select(document => InferredRecord.Of(new RecordCase(document!.Record, session.Cancellation)))];
        if (session.AsJson) session.Write(null, SwapsInferJson.Of(inferred));
        else new SwapsInferView(session.Canvas, session.Culture).Show(inferred);
        return inferred.All(each => each.Verdicts.IsConsistent) ? ExitCode.Done : ExitCode.Difference;
    }
}
