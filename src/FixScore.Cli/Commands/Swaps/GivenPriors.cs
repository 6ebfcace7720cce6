using System.Globalization;
using FixScore.Cli.Files;
using FixScore.Cli.Terminal;
using FixScore.Pairing;

namespace FixScore.Cli.Commands.Swaps;

/// <summary>Priors as given on the command line: files, then single roles.</summary>
static class GivenPriors
{
    public static TiePriors Of(CommandSession session, string[] given)
    {
        var priors = given.Where(each => !each.Contains('=', StringComparison.Ordinal)).Aggregate(TiePriors.BuiltIn, (_, path) => Read(session.Read(path)));
        return given.Where(each => each.Contains('=', StringComparison.Ordinal)).Aggregate(priors, With);
    }

    static TiePriors Read(Input input)
    {
        try
        {
            return TiePriors.Read(input.WithoutMark);
        }
        catch (FormatException failure)
        {
            throw new InputException(input.Name, "priors-invalid", failure.Message, "Write {\"about\": \"...\", \"roles\": {\"battery\": 0.4}, \"other\": 0.1}.");
        }
    }

    static TiePriors With(TiePriors priors, string given)
    {
        var (role, text) = (given[..given.IndexOf('=', StringComparison.Ordinal)], given[(given.IndexOf('=', StringComparison.Ordinal) + 1)..]);
        if (!decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var probability))
            throw new UsageException($"'{given}' is no prior. Write ROLE=P, such as battery=0.4.");
        try
        {
            return priors.With(role, probability);
        }
        catch (FormatException failure)
        {
            throw new UsageException(failure.Message);
        }
    }
}
