using FixScore.Records;

namespace FixScore.Testing;

/// <summary>A record to try a criterion on.</summary>
/// <param name="name">Its id, with what was taken from it.</param>
/// <param name="record">The record.</param>
sealed class Sample(string name, TeardownRecord record)
{
    public string Name => name;

    public TeardownRecord Record => record;

    public TeardownCase Case { get; } = new RecordCase(record);

    public PointerWalker Walker { get; } = new(record);

    /// <summary>The same record as a case from which nothing was derived yet.</summary>
    public Sample Afresh() => new(name, record);
}
