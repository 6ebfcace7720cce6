using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>What is done, in words.</summary>
static class ActionWords
{
    /// <summary>The action and a comma; nothing where the record only says that it is none of the list, since the operation's id tells more.</summary>
    public static string Before(OperationAction action) => action == OperationAction.Other ? "" : $"{RecordTerms.Plainly(action)}, ";
}
