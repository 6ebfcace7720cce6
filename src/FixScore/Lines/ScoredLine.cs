using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FixScore;

/// <summary>What became of one line: a score, or what stood in its way. Immutable.</summary>
/// <param name="Number">The number of the line, from 1; blank lines count.</param>
/// <param name="Score">The score; <c>null</c> when the record cannot be used, the profile is not for it, or a criterion failed.</param>
/// <param name="Problems">Why there is no score, with columns of the line; empty when there is one.</param>
/// <param name="HasFailure">Whether a criterion or a check failed: a fault of a plugin, not of the record.</param>
public sealed record ScoredLine(long Number, ScoreDocument? Score, ImmutableArray<LocatedProblem> Problems, bool HasFailure)
{
    static readonly JsonWriterOptions Compact = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One line of JSON in UTF-8, ended by a line feed: the score document, or <c>{"line": number, "problems": [...]}</c>.</summary>
    public byte[] ToJson() => Score is { } score ? [.. score.ToJsonLine(), (byte)'\n'] : Problem();

    byte[] Problem()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Compact))
        {
            json.WriteStartObject();
            json.WriteNumber("line", Number);
            json.WriteStartArray("problems");
            foreach (var problem in Problems) Write(json, problem);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return [.. buffer.WrittenSpan, (byte)'\n'];
    }

    void Write(Utf8JsonWriter json, LocatedProblem located)
    {
        json.WriteStartObject();
        json.WriteString("code", located.Problem.Code);
        json.WriteString("severity", Word.Of(located.Problem.Severity));
        json.WriteString("pointer", located.Problem.At.Text);
        json.WriteNumber("line", Number);
        json.WriteNumber("column", located.Column);
        json.WriteString("message", located.Problem.Message);
        json.WriteString("hint", located.Problem.Hint);
        json.WriteEndObject();
    }
}
