namespace FixScore.Fuzz.Mutation;

/// <summary>Changes that know nothing of JSON.</summary>
static class Bytes
{
    public static byte[] Changed(byte[] text, byte[] other, Chance chance)
    {
        var (from, to) = Stretch(text, chance);
        return chance.Below(7) switch
        {
            0 => Flipped(text, chance),
            1 => Joined(text.AsSpan(0, from), text.AsSpan(to)),
            2 => text[..from],
            3 => Joined(text.AsSpan(0, to), text.AsSpan(from)),
            4 => Repeated(text, from, to, chance.Below(20)),
            5 => Joined(text.AsSpan(0, from), other.AsSpan(other.Length == 0 ? 0 : chance.Below(other.Length))),
            _ => Put(text, from, from, chance.Of(chance.OneIn(3) ? Words.Values : Words.Bits)),
        };
    }

    /// <summary>A text with a stretch of it replaced.</summary>
    public static byte[] Put(byte[] text, int from, int to, ReadOnlySpan<byte> instead)
    {
        var put = new byte[text.Length - (to - from) + instead.Length];
        text.AsSpan(0, from).CopyTo(put);
        instead.CopyTo(put.AsSpan(from));
        text.AsSpan(to).CopyTo(put.AsSpan(from + instead.Length));
        return put;
    }

    static byte[] Joined(ReadOnlySpan<byte> head, ReadOnlySpan<byte> tail) => [.. head, .. tail];

    static byte[] Flipped(byte[] text, Chance chance)
    {
        if (text.Length == 0) return [(byte)chance.Below(256)];
        var flipped = text.ToArray();
        flipped[chance.Below(text.Length)] ^= (byte)(1 << chance.Below(8));
        return flipped;
    }

    static byte[] Repeated(byte[] text, int from, int to, int times)
    {
        var all = new byte[(to - from) * times];
        for (var i = 0; i < all.Length; i++) all[i] = text[from + i % (to - from)];
        return Put(text, to, to, all);
    }

    static (int From, int To) Stretch(byte[] text, Chance chance)
    {
        var from = chance.Below(text.Length + 1);
        return (from, Math.Min(text.Length, from + chance.Below(chance.OneIn(4) ? 400 : 12)));
    }
}
