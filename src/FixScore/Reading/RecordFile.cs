using System.Buffers;
using System.Text.Json;
using FixScore.Canonical;
using FixScore.Checks;
using FixScore.Reading;
using FixScore.Reading.Records;
using FixScore.Records;
using FixScore.Writing;

namespace FixScore;

/// <summary>Reads and writes teardown records. Thread safe.</summary>
public static class RecordFile
{
    /// <summary>Reads a record; all problems come at once.</summary>
    /// <param name="utf8">The text: JSON in UTF-8, at most 64 MiB, a byte order mark is skipped.</param>
    /// <param name="catalogue">Whose record checks run, after the kernel's own found no error; <c>null</c> for none. What one of them throws is passed on.</param>
    public static ReadResult<RecordDocument> Read(ReadOnlyMemory<byte> utf8, Catalogue? catalogue = null) => Read(utf8, catalogue, record => new RecordCase(record));

    /// <summary>The same, with the case that checks look at handed in: what they derive need not be derived again.</summary>
    internal static ReadResult<RecordDocument> Read(ReadOnlyMemory<byte> utf8, Catalogue? catalogue, Func<TeardownRecord, TeardownCase> caseOf)
    {
        var text = JsonText.WithoutMark(utf8);
        var (document, problem, offset) = JsonText.Parse(text);
        if (document is null) return new(null, Locator.At(text, problem!, offset));
        using (document)
        {
            var context = new ReadingContext();
            var record = Record(document.RootElement, context);
            if (record is not null && !context.HasErrors) context.AddRange(Registered(record, catalogue, caseOf));
            var problems = context.Problems.Count == 0 ? [] : Locator.Locate(text, context.Problems);
            return record is null || context.HasErrors ? new(null, problems) : new(new(record, Digest.Of(document.RootElement, "$schema"), problems), problems);
        }
    }

    /// <summary>Reads a record from a file.</summary>
    /// <exception cref="InvalidDocumentException">The record cannot be used; carries all problems.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    public static RecordDocument Load(string path, Catalogue? catalogue = null) => Read(JsonText.Load(path), catalogue).OrThrow();

    /// <summary>Writes a record: indented, lines ended by a line feed, members in the order of the format, unknown and default ones left out.</summary>
    /// <remarks>The same record gives the same bytes everywhere. Nothing is checked; see <see cref="RecordDocument.Of"/>.</remarks>
    /// <param name="record">The record.</param>
    /// <param name="output">Where to write.</param>
    /// <exception cref="InvalidOperationException">Conditions are nested so deep that the text would be more than 64 levels deep.</exception>
    /// <exception cref="ArgumentException">A text holds half of a surrogate pair.</exception>
    public static void Write(TeardownRecord record, IBufferWriter<byte> output) => RecordWriter.Write(record, output);

    /// <summary>A record as JSON in UTF-8, as <see cref="Write"/> writes it.</summary>
    /// <inheritdoc cref="Write" path="/exception"/>
    public static byte[] ToJson(TeardownRecord record)
    {
        var output = new ArrayBufferWriter<byte>();
        Write(record, output);
        return output.WrittenSpan.ToArray();
    }

    static TeardownRecord? Record(JsonElement root, ReadingContext context)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            context.Error(Pointer.Root, "wrong-type", "A record is an object.", "Start from 'fixscore new record'.");
            return null;
        }
        var reader = new ObjectReader(root, context, Place.Root);
        var record = RecordReader.Read(reader);
        reader.Done();
        context.AddRange(RecordChecks.Check(record));
        return record;
    }

    static IEnumerable<Problem> Registered(TeardownRecord record, Catalogue? catalogue, Func<TeardownRecord, TeardownCase> caseOf)
    {
        if (catalogue is null || catalogue.Checks.IsEmpty) return [];
        var source = caseOf(record);
        return catalogue.Checks.SelectMany(check => check.Item.Check(source));
    }
}
