using System.Collections.Immutable;
using System.Globalization;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary><c>swaps infer RECORD...</c>: which parts trials tie to the main board, and which they clear.</summary>
sealed class SwapsInferCommand : AppCommand
{
    readonly Argument<string[]> records = new("RECORD") { Description = "Teardown records; - for standard input.", Arity = ArgumentArity.OneOrMore };

    readonly Option<decimal?> falseClean = RateOption("--false-clean", "How often a tie goes unseen where it should show, 0 to below 0.5: adds how probable each tie is.");
    readonly Option<decimal?> falseFlag = RateOption("--false-flag", "How often a function misbehaves although no tie is to blame, 0 to below 0.5.");
    readonly Option<int> seed = WholeNumberOption.Of("--seed", "Seed where probabilities have to be sampled: more than 20 linked parts.", 1);

    public SwapsInferCommand() : base("infer", "Tells which parts trials tie to the main board and which they clear; exits with 1 when trials contradict each other.",
        "swaps infer slate-2.json", "swaps infer slate-2.json slate-3.json --json", "swaps infer slate-2.json --false-clean 0.05 --false-flag 0.01")
    {
        Add(records);
        foreach (var option in (Option[])[falseClean, falseFlag, seed]) Add(option);
    }

    public override int Run(CommandSession session)
    {
        var read = session.Parsed.GetValue(records)!.Select(session.ReadRecord).ToArray();
        if (read.Any(document => document is null)) return ExitCode.InvalidInput;
        ImmutableArray<InferredRecord> inferred = [.. read.Select(document => InferredRecord.Of(
            new RecordCase(document!.Record, session.Cancellation), Noise(session), (ulong)session.Parsed.GetValue(seed), session.Cancellation))];
        if (session.AsJson) session.Write(null, SwapsInferJson.Of(inferred));
        else new SwapsInferView(session.Canvas, session.Culture).Show(inferred);
        return inferred.All(each => each.Verdicts.IsConsistent) ? ExitCode.Done : ExitCode.Difference;
    }

    NoiseModel? Noise(CommandSession session)
    {
        var (clean, flag) = (session.Parsed.GetValue(falseClean), session.Parsed.GetValue(falseFlag));
        return clean is null && flag is null ? null : new(new ErrorRates(clean ?? 0, flag ?? 0));
    }

    static Option<decimal?> RateOption(string name, string description) => new(name)
    {
        Description = description, HelpName = "P",
        CustomParser = result =>
        {
            if (decimal.TryParse(result.Tokens[0].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var rate) && rate < 0.5m) return rate;
            result.AddError($"'{result.Tokens[0].Value}' is not a rate from 0 to below 0.5 that {name} can take.");
            return null;
        },
    };
}
