using System.Globalization;

namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>Options that every command takes.</summary>
sealed class CommonOptions
{
    public Option<bool> Json { get; } = new("--json") { Description = "One JSON document on standard output instead of text.", Recursive = true };

    public Option<string[]> Profiles { get; } = new("--profiles")
    {
        Description = "A folder with more profiles; they come before the built-in ones. Can be given several times.", HelpName = "DIR", Recursive = true,
    };

    public Option<string[]> Plugins { get; } = new("--plugin")
    {
        Description = "A plugin file with more criteria. It runs with your rights. Can be given several times.", HelpName = "FILE", Recursive = true,
    };

    public Option<string[]> Pins { get; } = new("--pins")
    {
        Description = "Plugin files to load, each with the SHA-256 it must have, as JSON. Can be given several times.", HelpName = "FILE", Recursive = true,
    };

    public Option<bool> TrustOnce { get; } = new("--trust-once") { Description = "Load plugin files that are not pinned, or have changed, this once.", Recursive = true };

    public Option<int> Timeout { get; } = WholeNumberOption.Of("--plugin-timeout", "Seconds that one call of a plugin file may take; after that the run ends without a result. 60 if not given.", 60);

    public Option<bool> Measure { get; } = new("--measure") { Description = "Say on standard error how often plugin files were called and what they allocated.", Recursive = true };

    public Option<CultureInfo> Culture { get; } = new("--culture")
    {
        Description = "Culture in which numbers are shown to people, such as de-DE. Documents never depend on it.", HelpName = "NAME", Recursive = true,
        DefaultValueFactory = _ => CultureInfo.InvariantCulture,
        CustomParser = result =>
        {
            if (Find(result.Tokens[0].Value) is { } culture) return culture;
            result.AddError($"There is no culture '{result.Tokens[0].Value}'.");
            return null;
        },
    };

    public void AddTo(Command root)
    {
        (Timeout.Recursive, Timeout.HelpName) = (true, "SECONDS");
        foreach (var option in (Option[])[Json, Profiles, Plugins, Pins, TrustOnce, Timeout, Measure, Culture]) root.Options.Add(option);
    }

    static CultureInfo? Find(string name)
    {
        try
        {
            return CultureInfo.GetCultureInfo(name, predefinedOnly: true);
        }
        catch (CultureNotFoundException)
        {
            return null;
        }
    }
}
