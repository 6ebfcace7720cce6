namespace FixScore;

/// <summary>Something derived from a record, such as the groups of parts that are replaced together. Immutable.</summary>
/// <typeparam name="TSelf">The fact itself.</typeparam>
public interface IFact<TSelf> where TSelf : class, IFact<TSelf>
{
    /// <summary>Derives the fact. Must give the same for the same record, everywhere.</summary>
    static abstract TSelf From(TeardownCase source, CancellationToken cancellation);
}

/// <summary>A fact under stated rules: verdicts in one lock state, routes under one reading of a law.</summary>
/// <typeparam name="TSelf">The fact itself.</typeparam>
/// <typeparam name="TKey">The rules, compared by value.</typeparam>
public interface IFact<TSelf, TKey> where TSelf : class, IFact<TSelf, TKey>
{
    /// <summary>Derives the fact under <paramref name="key"/>. Must give the same for the same record and key, everywhere.</summary>
    static abstract TSelf From(TeardownCase source, TKey key, CancellationToken cancellation);
}
