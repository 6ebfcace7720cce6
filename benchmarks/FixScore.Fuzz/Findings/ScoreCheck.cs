using System.Text.Json;
using FixScore.Cli.Commands.Verify;
using FixScore.Cli.Files;

namespace FixScore.Fuzz.Findings;

/// <summary>A score is in order, within the scale, and its document verifies.</summary>
static class ScoreCheck
{
    public static void Score(RecordDocument record, Profile profile, Traces traces)
    {
        ScoreDocument score;
        try
        {
            score = Scorer.Score(record, profile);
        }
        catch (ProfileMismatchException mismatch)
        {
            ProblemCheck.Said(mismatch.Problem, traces);
            return;
        }
        Within(score.Total, profile);
        Within(score.Shown, profile);
        foreach (var reason in score.Nodes.SelectMany(node => node.Reasons))
        {
            traces.Add(reason.Code);
            FaultException.Unless(reason.Text.Length > 0, $"The reason {reason.Code} says nothing.");
        }
        traces.Add(score.Total.IsExact ? "exact" : "range");
        foreach (var gate in score.Gates) traces.Add(gate.Ends == GateEnds.Both ? "gate" : "gate-perhaps");
        Verifies(score);
    }

    static void Within(Interval total, Profile profile) => FaultException.Unless(
        profile.Scale.Min <= total.Low && total.Low <= total.High && total.High <= profile.Scale.Max, $"The total {total.Low} to {total.High} is no part of the scale.");

    static void Verifies(ScoreDocument score)
    {
        using var given = GivenScore.Parse(new Input("score", score.ToJson()));
        FaultException.Unless(Verifier.HasOwnDigest(given.Root), "A score document does not have its own digest.");
        FaultException.Unless(Verifier.Compare(given.Root, score).Verdict == Verdict.Identical, "A score document differs from itself.");
    }

    /// <summary>The digest of a whole score document, its own digest in it.</summary>
    public static string DigestOf(ScoreDocument score)
    {
        using var document = JsonDocument.Parse(score.ToJson());
        return Canonical.Digest.Of(document.RootElement, "$schema");
    }

    /// <summary>What is said to be the same has the same content.</summary>
    public static void Verified(JsonElement given, ScoreDocument computed, string digest, Traces traces)
    {
        var verification = Verifier.Compare(given, computed);
        traces.Add(verification.Verdict.ToString());
        foreach (var difference in verification.Differences)
        {
            FaultException.Unless(difference.Given != difference.Computed, $"Nothing differs at {difference.At}.");
            traces.Add(difference.Counts ? "counts" : "text", difference.At);
        }
        var isSame = Canonical.Digest.Of(given, "$schema") == digest;
        FaultException.Unless(isSame == (verification.Verdict == Verdict.Identical), $"The verdict is {verification.Verdict}, but the content is {(isSame ? "the same" : "another")}.");
        if (Verifier.HasOwnDigest(given)) traces.Add("own-digest");
    }
}
