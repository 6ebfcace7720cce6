using System.Globalization;

namespace FixScore.Cli;

// Inside the namespace, so that options here are those of the command line, not of criteria.
using System.CommandLine;

/// <summary>Options that take a whole number above 0, always written in digits, whatever the culture of the machine.</summary>
static class WholeNumberOption
{
    public static Option<int> Of(string name, string description, int usual) => new(name)
    {
        Description = description, HelpName = "N", DefaultValueFactory = _ => usual,
        CustomParser = result =>
        {
            if (int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0) return count;
            result.AddError($"'{result.Tokens[0].Value}' is not a whole number above 0 that {name} can take.");
            return usual;
        },
    };
}
