using System.Text.Json;

namespace FixScore.Fuzz.Mutation;

/// <summary>A value in a text.</summary>
/// <param name="Entry">Where it begins with its member's name; the same as <paramref name="From"/> in a list.</param>
/// <param name="NameEnd">Where the name ends; -1 in a list.</param>
/// <param name="From">Where the value begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Kind">Its first token.</param>
readonly record struct JsonPlace(int Entry, int NameEnd, int From, int To, JsonTokenType Kind);

/// <summary>Finds every value in a text, so that changes can be made on its bytes: what a document model cannot hold can still be written.</summary>
static class JsonPlaces
{
    static readonly JsonReaderOptions Deep = new() { MaxDepth = 10_000 };

    /// <summary>All values below the outermost; none when the text is no JSON.</summary>
    public static List<JsonPlace> Of(byte[] text)
    {
        var (places, open) = (new List<JsonPlace>(), new Stack<int>());
        var reader = new Utf8JsonReader(text, Deep);
        var (entry, nameEnd) = (-1, -1);
        try
        {
            while (reader.Read())
            {
                var (from, to) = ((int)reader.TokenStartIndex, (int)reader.BytesConsumed);
                if (reader.TokenType == JsonTokenType.PropertyName) (entry, nameEnd) = (from, NameEnd(text, to));
                else if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
                {
                    var opened = open.Pop();
                    places[opened] = places[opened] with { To = to };
                }
                else
                {
                    if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray) open.Push(places.Count);
                    places.Add(new(entry < 0 ? from : entry, nameEnd, from, to, reader.TokenType));
                    (entry, nameEnd) = (-1, -1);
                }
            }
        }
        catch (JsonException)
        {
            return [];
        }
        if (places.Count > 0) places.RemoveAt(0);
        return places;
    }

    // The reader takes the colon with the name.
    static int NameEnd(byte[] text, int consumed) => Array.LastIndexOf(text, (byte)'"', consumed - 1) + 1;
}
