using FixScore.Records;

namespace FixScore.Testing;

/// <summary>The record itself as a place; apart from the lists of members, so that these may start in any order.</summary>
static class RecordRoot
{
    public static Place<TeardownRecord> Place { get; } = new("", (record, map) => map(Pointer.Root, record));
}
