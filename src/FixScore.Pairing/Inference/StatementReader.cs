using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Pairing.Inference;

/// <summary>Reads the trials of one context as statements about candidates.</summary>
sealed class StatementReader
{
    readonly ImmutableArray<SwapTrial> trials;
    readonly ICandidates candidates;
    readonly ImmutableArray<ImmutableArray<string>> foreign;
    readonly ILookup<(string Host, string Function), int> faults;

    StatementReader(ImmutableArray<SwapTrial> trials, ICandidates candidates)
    {
        this.trials = trials;
        this.candidates = candidates;
        foreign = [.. trials.Select(candidates.In)];
        faults = Enumerable.Range(0, trials.Length)
            .Where(i => foreign[i].IsEmpty)
            .SelectMany(i => trials[i].Checks.Where(CheckReading.IsFlag), (i, check) => (Key: (trials[i].Host, check.Function), Control: i))
            .Distinct()
            .ToLookup(fault => fault.Key, fault => fault.Control);
    }

    public static Statements Read(ImmutableArray<SwapTrial> trials, ICandidates candidates) =>
        new StatementReader(trials, candidates).Read();

    Statements Read()
    {
        var swapped = Enumerable.Range(0, trials.Length).Where(i => !foreign[i].IsEmpty).ToImmutableArray();
        return new(
            [.. swapped.SelectMany(FlagsOf)],
            [.. swapped.Select(ClearanceOf).OfType<Clearance>()],
            [.. foreign.SelectMany(parts => parts).Distinct()]);
    }

    IEnumerable<Flag> FlagsOf(int trial)
    {
        var unsettled = UnsettledIn(trial);
        return
            from check in trials[trial].Checks
            where Counts(trial, check)
            select new Flag(trial, new(trials[trial], check), [.. foreign[trial].Where(each => candidates.MayBlame(check, each))], unsettled);
    }

    Clearance? ClearanceOf(int trial)
    {
        var checks = trials[trial].Checks;
        var unsettled = UnsettledIn(trial).ToHashSet(StringComparer.Ordinal);
        var parts = foreign[trial].RemoveAll(unsettled.Contains);
        if (parts.IsEmpty || !checks.Any(CheckReading.Works) || checks.Any(check => Counts(trial, check))) return null;
        var setAside = checks.Where(CheckReading.IsFlag).Select(check => check.Function).Distinct();
        return new(trial, parts, [.. setAside.Select(function => faults[(trials[trial].Host, function)].ToImmutableArray())]);
    }

    ImmutableArray<string> UnsettledIn(int trial)
    {
        var open = trials[trial].Checks.Where(check => !check.Works() && !Counts(trial, check)).ToImmutableArray();
        return [.. foreign[trial].Where(each => open.Any(check => candidates.MayBlame(check, each)))];
    }

    bool Counts(int trial, FunctionCheck check) => check.IsFlag() && !faults.Contains((trials[trial].Host, check.Function));
}
