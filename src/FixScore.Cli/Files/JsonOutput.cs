using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FixScore.Cli.Files;

/// <summary>JSON on standard output: indented, the same bytes everywhere.</summary>
static class JsonOutput
{
    static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static byte[] Write(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options)) write(json);
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    /// <summary>A list of documents that are JSON already.</summary>
    public static byte[] List(IEnumerable<byte[]> documents) => Write(json =>
    {
        json.WriteStartArray();
        foreach (var document in documents)
        {
            using var parsed = JsonDocument.Parse(document);
            parsed.WriteTo(json);
        }
        json.WriteEndArray();
    });
}
