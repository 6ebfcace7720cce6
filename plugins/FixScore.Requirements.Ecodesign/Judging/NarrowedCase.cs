using FixScore.Records;

namespace FixScore.Requirements.Judging;

/// <summary>A record in which some operations can never be done. Facts are derived anew whenever they are asked for.</summary>
sealed class NarrowedCase : TeardownCase
{
    readonly TeardownCase whole;
    readonly CancellationToken cancellation;

    public NarrowedCase(TeardownCase whole, Func<Operation, bool> barred, CancellationToken cancellation)
    {
        (this.whole, this.cancellation) = (whole, cancellation);
        Record = whole.Record with
        {
            Operations = [.. whole.Record.Operations.Select(operation => barred(operation) ? Never(operation) : operation)],
        };
    }

    public override TeardownRecord Record { get; }

    public override Pointer At(RecordEntry entry) =>
        whole.At(entry is Operation operation ? whole.Record.Operations.First(each => each.Id == operation.Id) : entry);

    public override T Derive<T>() => T.From(this, cancellation);

    public override T Derive<T, TKey>(TKey key) => T.From(this, key, cancellation);

    // It waits for itself.
    static Operation Never(Operation operation) => operation with { After = [.. operation.After, new Condition.Done(operation.Id)] };
}
