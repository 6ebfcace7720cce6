namespace FixScore.Fuzz.Findings;

/// <summary>Takes away what a failure does not need: ever smaller stretches, as in Zeller, Hildebrandt: Simplifying and isolating failure-inducing input (IEEE TSE 28, 2002).</summary>
static class Smaller
{
    const int MostTries = 4000;

    public static byte[] Of(byte[] input, Func<byte[], bool> fails)
    {
        var tries = 0;
        input = Entries(input, text => ++tries < MostTries && fails(text));
        for (var length = Math.Max(1, input.Length / 2); length > 0; length /= 2)
            for (var from = 0; from < input.Length && ++tries < 2 * MostTries;)
            {
                byte[] without = [.. input[..from], .. input[Math.Min(input.Length, from + length)..]];
                if (fails(without)) input = without;
                else from += length;
            }
        return input;
    }

    // Whole members first: a text that is still JSON fails further inside.
    static byte[] Entries(byte[] input, Func<byte[], bool> fails)
    {
        for (var at = 0; at < Mutation.JsonPlaces.Of(input).Count;)
        {
            var without = Mutation.Members.Without(input, Mutation.JsonPlaces.Of(input)[at]);
            if (fails(without)) input = without;
            else at++;
        }
        return input;
    }
}
