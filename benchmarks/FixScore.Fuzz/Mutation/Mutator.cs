namespace FixScore.Fuzz.Mutation;

/// <summary>Makes wrong inputs of right ones.</summary>
static class Mutator
{
    const int Longest = 256 << 10;

    /// <summary>A text with one to six changes.</summary>
    /// <param name="text">What is changed.</param>
    /// <param name="other">Where pieces are borrowed from.</param>
    /// <param name="chance">What decides.</param>
    public static byte[] Changed(byte[] text, byte[] other, Chance chance)
    {
        var onBytes = chance.OneIn(5);
        for (var left = 1 + chance.Below(chance.OneIn(4) ? 6 : 2); left > 0; left--)
        {
            text = (onBytes ? null : Members.Changed(text, other, chance)) ?? Bytes.Changed(text, other, chance);
            if (text.Length > Longest) text = text[..Longest];
        }
        return text;
    }
}
