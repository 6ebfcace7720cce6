using System.Runtime.ExceptionServices;
using FixScore.Records;

namespace FixScore;

/// <summary>A record and the facts derived from it, each once.</summary>
/// <remarks>
/// Thread safe. One lock guards all facts, because facts ask for each other and two threads deriving them crosswise
/// would wait for ever.
/// </remarks>
/// <param name="record">The record.</param>
/// <param name="cancellation">Handed to every fact.</param>
public sealed class RecordCase(TeardownRecord record, CancellationToken cancellation = default) : TeardownCase
{
    readonly Lock gate = new();
    readonly Dictionary<(Type Fact, object? Key), object> facts = [];
    readonly Lazy<EntryPointers> pointers = new(() => new EntryPointers(record));

    /// <inheritdoc/>
    public override TeardownRecord Record => record;

    /// <inheritdoc/>
    public override Pointer At(RecordEntry entry) => pointers.Value.Of(entry);

    /// <inheritdoc/>
    public override T Derive<T>() => Fact(null, () => T.From(this, cancellation));

    /// <inheritdoc/>
    public override T Derive<T, TKey>(TKey key) => Fact(key, () => T.From(this, key, cancellation));

    T Fact<T>(object? key, Func<T> derive) where T : class
    {
        lock (gate)
        {
            if (!facts.TryGetValue((typeof(T), key), out var fact)) fact = Derived(key, derive);
            (fact as ExceptionDispatchInfo)?.Throw();
            return fact as T ?? throw new InvalidOperationException($"The fact {typeof(T).Name} asks for itself.");
        }
    }

    object Derived<T>(object? key, Func<T> derive) where T : class
    {
        facts[(typeof(T), key)] = InProgress;
        object fact;
        try
        {
            fact = derive();
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            fact = ExceptionDispatchInfo.Capture(failure);
        }
        return facts[(typeof(T), key)] = fact;
    }

    static readonly object InProgress = new();
}
