using FixScore.Disassembly;
using FixScore.Records;

namespace FixScore.Criteria.Time;

/// <summary>Observed seconds of an operation, waiting counted or not.</summary>
static class HandsOn
{
    /// <summary>Seconds that count; <c>null</c> when the operation has no time.</summary>
    public static Interval? Of(Operation operation, Waiting waiting)
    {
        if (OperationTime.Of(operation) is not { } all) return null;
        if (waiting == Waiting.Count) return all;
        var wait = WaitOf(operation, all, waiting);
        return new(Math.Max(0, all.Low - wait.High), Math.Max(0, all.High - wait.Low));
    }

    static Interval WaitOf(Operation operation, Interval all, Waiting waiting) => operation.WaitSeconds switch
    {
        { } recorded => recorded.Within(0, all.High),
        null when waiting == Waiting.LeaveOutRecorded => 0m,
        null => new(0, all.High),
    };
}
