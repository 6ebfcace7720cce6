using FixScore.Records;

namespace FixScore.Checks;

/// <summary>All checks of a record that need no search. They go on over whatever other checks object to.</summary>
static class RecordChecks
{
    public static IEnumerable<Problem> Check(TeardownRecord record)
    {
        var under = new CheckedRecord(record);
        return IdCheck.Check(under)
            .Concat(ReferenceCheck.Check(under))
            .Concat(PartCheck.Check(under))
            .Concat(OrderCheck.Check(under))
            .Concat(OperationCheck.Check(under))
            .Concat(TrialCheck.Check(under));
    }
}
