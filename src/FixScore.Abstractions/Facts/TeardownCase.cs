using FixScore.Records;

namespace FixScore;

/// <summary>A record and what is derived from it, each fact once.</summary>
/// <remarks>
/// Thread safe; facts are immutable and shared between criteria. A fact that fails is kept as failed and fails again for
/// whoever asks next. A fact that asks for itself is refused with an <see cref="InvalidOperationException"/>. Work is
/// limited by counted effort, never by time, so that it is the same everywhere.
/// </remarks>
public abstract class TeardownCase
{
    /// <summary>The record.</summary>
    public abstract TeardownRecord Record { get; }

    /// <summary>Where an entry stands in the record.</summary>
    /// <param name="entry">An entry of this very record.</param>
    /// <exception cref="ArgumentException">The entry is not one of this record.</exception>
    public abstract Pointer At(RecordEntry entry);

    /// <summary>A fact about the record, derived when first asked for.</summary>
    public abstract T Derive<T>() where T : class, IFact<T>;

    /// <summary>A fact under stated rules, derived when first asked for under these rules.</summary>
    public abstract T Derive<T, TKey>(TKey key) where T : class, IFact<T, TKey> where TKey : IEquatable<TKey>;
}
