using System.Text.Json;

namespace FixScore.Fuzz.Mutation;

/// <summary>Changes of members and elements that leave most of the structure as it is.</summary>
static class Members
{
    /// <summary>The text with one change; <c>null</c> when it is no JSON with anything in it.</summary>
    public static byte[]? Changed(byte[] text, byte[] other, Chance chance)
    {
        var places = JsonPlaces.Of(text);
        if (places.Count == 0) return null;
        var (one, two) = (chance.Of(places), chance.Of(places));
        return chance.Below(12) switch
        {
            0 or 1 => Without(text, one),
            2 => Twice(text, one),
            3 or 4 => Bytes.Put(text, one.From, one.To, text.AsSpan(two.From..two.To)),
            5 => Swapped(text, one, two),
            6 or 7 => Bytes.Put(text, one.From, one.To, chance.Of(Words.Values)),
            8 => SameKind(text, places, one, chance),
            9 => Renamed(text, places, one, chance),
            10 => Wrapped(text, one, chance.OneIn(10) ? chance.Below(70) : 1),
            _ => Borrowed(text, one, other, chance),
        };
    }

    /// <summary>The text without an entry and its comma.</summary>
    public static byte[] Without(byte[] text, JsonPlace place)
    {
        var (from, to) = (place.Entry, place.To);
        while (to < text.Length && char.IsWhiteSpace((char)text[to])) to++;
        if (to < text.Length && text[to] == ',') return Bytes.Put(text, from, to + 1, []);
        while (from > 0 && char.IsWhiteSpace((char)text[from - 1])) from--;
        return Bytes.Put(text, from > 0 && text[from - 1] == ',' ? from - 1 : from, place.To, []);
    }

    static byte[] Twice(byte[] text, JsonPlace place) => Bytes.Put(text, place.To, place.To, [(byte)',', .. text[place.Entry..place.To]]);

    static byte[] Swapped(byte[] text, JsonPlace one, JsonPlace two)
    {
        if (one.From > two.From) (one, two) = (two, one);
        if (one.To > two.From) return Bytes.Put(text, one.From, one.To, text.AsSpan(two.From..two.To));
        var (first, second) = (text[one.From..one.To], text[two.From..two.To]);
        return Bytes.Put(Bytes.Put(text, two.From, two.To, first), one.From, one.To, second);
    }

    // Ids meet ids: entries that need themselves, cycles, doubles.
    static byte[] SameKind(byte[] text, List<JsonPlace> places, JsonPlace place, Chance chance)
    {
        var alike = places.Where(each => each.Kind == place.Kind).ToArray();
        var donor = chance.Of(alike);
        return Bytes.Put(text, place.From, place.To, text.AsSpan(donor.From..donor.To));
    }

    static byte[] Renamed(byte[] text, List<JsonPlace> places, JsonPlace place, Chance chance)
    {
        var donor = chance.Of(places);
        if (place.NameEnd < 0) return chance.OneIn(2) ? Twice(text, place) : Without(text, place);
        return donor.NameEnd < 0 || chance.OneIn(4)
            ? Bytes.Put(text, place.Entry + 1, place.Entry + 1, chance.OneIn(2) ? "\\ud800"u8 : "x/~"u8)
            : Bytes.Put(text, place.Entry, place.NameEnd, text.AsSpan(donor.Entry..donor.NameEnd));
    }

    static byte[] Wrapped(byte[] text, JsonPlace place, int deep) =>
        Bytes.Put(text, place.From, place.To, [.. Enumerable.Repeat((byte)'[', deep), .. text[place.From..place.To], .. Enumerable.Repeat((byte)']', deep)]);

    static byte[] Borrowed(byte[] text, JsonPlace place, byte[] other, Chance chance)
    {
        var theirs = JsonPlaces.Of(other);
        if (theirs.Count == 0) return Twice(text, place);
        var donor = chance.Of(theirs);
        var alike = theirs.Where(each => each.Kind == place.Kind).ToArray();
        if (alike.Length > 0 && place.Kind != JsonTokenType.StartObject) donor = chance.Of(alike);
        return Bytes.Put(text, place.From, place.To, other.AsSpan(donor.From..donor.To));
    }
}
