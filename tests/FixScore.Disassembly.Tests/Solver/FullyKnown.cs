using FixScore.Disassembly.Tests.Oracle;
using FixScore.Records;

namespace FixScore.Disassembly.Tests.Solver;

/// <summary>Records that the constraint program can say all of: tools are known, times are known and whole.</summary>
static class FullyKnown
{
    public static bool Is(TeardownRecord record) =>
        record.Operations.All(operation => operation.Tools.IsRecorded && Timing.Of(operation) is { } time && time.Low % 1 == 0)
        && record.Parts.All(part => part.Reach.Is(Reach.NotTried));
}
