using FixScore.Fuzz.Findings;
using Microsoft.Extensions.DependencyInjection;

namespace FixScore.Fuzz.Targets;

/// <summary>Settings files, read as programs with a service collection read them.</summary>
sealed class SettingsTarget : Target
{
    readonly string file = Path.Combine(Directory.CreateTempSubdirectory("fixscore-fuzz-").FullName, "settings.json");

    public override string Name => "settings";

    public override byte[][] Seeds => Fuzz.Seeds.Settings;

    public override void Try(byte[] input, int share, Traces traces)
    {
        File.WriteAllBytes(file, input);
        using var provider = new ServiceCollection().AddFixScoreFromFile(file).BuildServiceProvider();
        try
        {
            var settings = provider.GetRequiredService<FixScoreSettings>();
            traces.Add(settings.DefaultProfile is null ? "without-profile" : "with-profile");
        }
        catch (InvalidSettingsException wrong)
        {
            FaultException.Unless(!wrong.Problems.IsEmpty, "Settings are wrong without a problem.");
            foreach (var problem in wrong.Problems) ProblemCheck.Said(problem, traces);
        }
    }
}
