using System.Globalization;

namespace FixScore.Pairing.Tests;

/// <summary>How often random tests try. Mutation testing, which runs them a thousand times, divides that.</summary>
static class Runs
{
    const string Fewer = "FIXSCORE_FEWER";

    static readonly int Divisor = int.Parse(Environment.GetEnvironmentVariable(Fewer) ?? "1", CultureInfo.InvariantCulture);

    public static int Of(int usual) => Math.Max(1, usual / Divisor);
}
