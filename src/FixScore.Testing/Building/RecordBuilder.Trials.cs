using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Testing;

public sealed partial class RecordBuilder
{
    /// <summary>Adds a swap trial.</summary>
    /// <param name="id">Its id, a slug.</param>
    /// <param name="host">Id of the unit that the parts were put into.</param>
    /// <param name="installed">Parts and the units they came from; <c>[]</c> for a control.</param>
    /// <param name="checks">Functions and how they behaved.</param>
    public RecordBuilder Swap(
        string id, string host, ImmutableArray<(string Part, string From)> installed,
        params ImmutableArray<(string Function, OneOf<SwapResult> Result)> checks) =>
        Swap(new SwapTrial
        {
            Id = id, Host = host,
            Installed = [.. installed.Select(part => new InstalledPart(part.Part, part.From))],
            Checks = [.. checks.Select(check => new FunctionCheck { Function = check.Function, Result = check.Result })],
        });

    /// <summary>Adds a swap trial with a context or with checks that implicate certain parts.</summary>
    public RecordBuilder Swap(SwapTrial trial) =>
        With(record => record with { Swaps = Plus(record.Swaps, trial) });

    /// <summary>Adds a trial with the boot lock, without losses.</summary>
    public RecordBuilder Lock(string id, string unit, LockState from, LockState to, Func<LockTrial, LockTrial>? configure = null)
    {
        var trial = Changed(new LockTrial { Id = id, Unit = unit, From = from, To = to, Losses = [] }, configure);
        return With(record => record with { Locks = Plus(record.Locks, trial) });
    }
}
