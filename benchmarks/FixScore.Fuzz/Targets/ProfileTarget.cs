using FixScore.Fuzz.Findings;

namespace FixScore.Fuzz.Targets;

/// <summary>Profiles: put into a library, read with all that is installed, and used.</summary>
sealed class ProfileTarget : Target
{
    public override string Name => "profile";

    public override byte[][] Seeds => Fuzz.Seeds.Profiles;

    public override void Try(byte[] input, int share, Traces traces)
    {
        var installed = Fuzz.Seeds.Installed;
        var library = share % 16 == 0 ? ProfileLibrary.Of([("own", input)]).With(installed.Library) : installed.Library;
        var result = ProfileFile.Read(input, installed.Catalogue, library);
        ProblemCheck.Read(result, input, traces);
        if (share % 64 == 1) Commandline.Run(input, ["validate", "-"]);
        if (result.Value is { } profile && share % 4 == 2) ScoreCheck.Score(Fuzz.Seeds.Scorable[share / 4 % Fuzz.Seeds.Scorable.Length], profile, traces);
    }
}
