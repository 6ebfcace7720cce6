using FixScore.Cli.Commands.Verify;
using FixScore.Cli.Files;
using FixScore.Fuzz.Findings;

namespace FixScore.Fuzz.Targets;

/// <summary>Score documents: read as <c>verify</c> does and compared with the score that they were made from.</summary>
sealed class ScoreTarget : Target
{
    readonly ScoreDocument[] scores = [.. Fuzz.Seeds.Scorable.Take(3).SelectMany(record => Fuzz.Seeds.ForAll.Take(2).Select(profile => Scorer.Score(record, profile)))];

    readonly string[] digests;

    public ScoreTarget()
    {
        Seeds = [.. scores.Select(score => score.ToJson()), .. scores.Select(score => score.ToJsonLine())];
        digests = [.. scores.Select(ScoreCheck.DigestOf)];
    }

    public override string Name => "score";

    public override byte[][] Seeds { get; }

    public override void Try(byte[] input, int share, Traces traces)
    {
        try
        {
            using var given = GivenScore.Parse(new Input("score", input));
            traces.Add("parsed");
            traces.Add(given.Mode.ToString());
            ScoreCheck.Verified(given.Root, scores[share % scores.Length], digests[share % scores.Length], traces);
            traces.Add(Fuzz.Seeds.Installed.Library.Find(given.ProfileName) is null ? "profile-unknown" : "profile-known");
        }
        catch (InputException refused)
        {
            FaultException.Unless(refused.Code.Length > 0 && refused.Hint.Length > 0 && refused.Sentence.Length > 1, "A refusal says nothing.");
            traces.Add(refused.Code);
        }
    }
}
