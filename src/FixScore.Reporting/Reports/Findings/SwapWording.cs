using FixScore.Pairing;
using FixScore.Records;

namespace FixScore.Reporting.Reports;

/// <summary>Contexts and verdicts of swap trials in plain words.</summary>
static class SwapWording
{
    public static string Context(SwapContext context) => $"Boot lock {Lock(context.LockState)}, {Software(context.Software)}, {Procedure(context.Procedure)}";

    public static string Verdict(PartVerdict verdict) => (verdict.Verdict, verdict.OfGroup.Verdict) switch
    {
        (Pairing.Verdict.Paired, _) => "tied",
        (Pairing.Verdict.Suspect, Pairing.Verdict.Paired) => "tied as a group",
        (Pairing.Verdict.Suspect, _) => "open",
        (Pairing.Verdict.Cleared, Pairing.Verdict.Paired) => "free, its group is tied",
        (Pairing.Verdict.Cleared, _) => "free",
        _ => "not tried",
    };

    /// <summary>What the verdict in words rests on: the group where only the group is proven.</summary>
    public static Conclusion Shown(PartVerdict verdict) => IsTiedAsGroup(verdict) ? verdict.OfGroup : verdict.OfPart;

    public static bool IsTiedAsGroup(PartVerdict verdict) => verdict is { Verdict: Pairing.Verdict.Suspect, OfGroup.Verdict: Pairing.Verdict.Paired };

    public static string Worst(Conclusion conclusion) => conclusion.Verdict switch
    {
        Pairing.Verdict.Paired => RecordTerms.Words(conclusion.Worst),
        Pairing.Verdict.Suspect => $"up to {RecordTerms.Plainly(conclusion.AtWorst)}",
        Pairing.Verdict.Cleared => "none",
        _ => RecordTerms.NotRecorded,
    };

    static string Lock(LockState? state) => state is { } known ? RecordTerms.Plainly(known) : RecordTerms.NotRecorded;

    static string Software(string? software) => $"software {(software is null ? RecordTerms.NotRecorded : RecordTerms.Name(software))}";

    static string Procedure(SwapProcedure? procedure) => procedure switch
    {
        null => "procedure not recorded",
        SwapProcedure.None => "no procedure",
        { } known => $"after {RecordTerms.Plainly(known)}",
    };
}
