using System.Collections.Immutable;
using FixScore.Analysis.Chance;

namespace FixScore.Analysis.Sensitivity.Profiles;

/// <summary>Records scored under every way through the choices of a profile. All lines are moved by one factor in a run; since a criterion sees its own options alone, lines with different factors are put together of several runs. Immutable and thread safe.</summary>
sealed class KernelRuns
{
    readonly ProfileChoices choices;
    readonly KernelRun[][] runs;
    readonly int[] lineOfGate;

    KernelRuns(ProfileChoices choices, KernelRun[][] runs)
    {
        (this.choices, this.runs) = (choices, runs);
        lineOfGate = [.. choices.Gates.Select(gate => choices.Lines.Holding(gate.When.Node))];
    }

    public int Records => runs.Length;

    public static KernelRuns Of(ImmutableArray<RecordDocument> records, ProfileChoices choices, int threads, CancellationToken cancellation)
    {
        Profile[] profiles =
        [
            .. from reading in Enumerable.Range(0, choices.Readings.Length)
               from unknown in Enumerable.Range(0, choices.Unknown.Length)
               from factor in Enumerable.Range(0, choices.Factors.Length)
               select choices.At(reading, unknown, factor),
        ];
        var runs = new KernelRun[records.Length][];
        Shares.Run(records.Length, threads, () => runs, (all, record) => all[record] = Of(records[(int)record], profiles, choices, cancellation));
        return new(choices, runs);
    }

    /// <summary>The value of a line; <c>null</c> where it is left out.</summary>
    public decimal? Line(int record, int reading, int unknown, int factor, int line) => At(record, reading, unknown, factor).Lines[line];

    /// <summary>Whether a gate closes, with the factor of the line that it looks at. What is in no line keeps its points.</summary>
    public bool IsClosed(int record, int reading, int unknown, ReadOnlySpan<int> factors, int gate) =>
        At(record, reading, unknown, lineOfGate[gate] < 0 ? choices.Unmoved : factors[lineOfGate[gate]]).Closed[gate];

    KernelRun At(int record, int reading, int unknown, int factor) =>
        runs[record][(((reading * choices.Unknown.Length) + unknown) * choices.Factors.Length) + factor];

    // What is derived from the record, such as routes, is derived once, and a criterion judges once for each of its options.
    static KernelRun[] Of(RecordDocument record, Profile[] profiles, ProfileChoices choices, CancellationToken cancellation)
    {
        if (ProfileMismatchException.For(record.Record.Device, profiles[0]) is { } mismatch) throw mismatch;
        var (source, judged) = (new RecordCase(record.Record, cancellation), new Judged());
        return [.. profiles.Select(profile => KernelRun.Of(source, judged.Remembering(profile), choices, cancellation))];
    }
}
