using System.Text.Json;
using FixScore.Canonical;
using FixScore.Checks;
using FixScore.Reading;
using FixScore.Reading.Records;
using FixScore.Records;

namespace FixScore;

/// <summary>A record and the digest that score documents name it by.</summary>
/// <param name="Record">The record.</param>
/// <param name="Digest"><c>sha256:</c> and the SHA-256 of its RFC 8785 form without <c>$schema</c>.</param>
/// <param name="Warnings">What is probably a slip, but did not stand in the way.</param>
public sealed record RecordDocument(TeardownRecord Record, string Digest, System.Collections.Immutable.ImmutableArray<LocatedProblem> Warnings);

/// <summary>Reads teardown records. Thread safe.</summary>
public static class RecordFile
{
    /// <summary>Reads a record; all problems come at once.</summary>
    /// <param name="utf8">The text: JSON in UTF-8, at most 64 MiB, a byte order mark is skipped.</param>
    /// <param name="catalogue">Whose record checks run, after the kernel's own found no error; <c>null</c> for none.</param>
    public static ReadResult<RecordDocument> Read(ReadOnlyMemory<byte> utf8, Catalogue? catalogue = null)
    {
        var text = JsonText.WithoutMark(utf8);
        var (document, problem, offset) = JsonText.Parse(text);
        if (document is null) return new(null, Locator.At(text, problem!, offset));
        using (document)
        {
            var context = new ReadingContext();
            var record = Record(document.RootElement, context);
            if (record is not null && !context.HasErrors) context.AddRange(Registered(record, catalogue));
            var problems = context.Problems.Count == 0 ? [] : Locator.Locate(text, context.Problems);
            return record is null || context.HasErrors ? new(null, problems) : new(new(record, Digest.Of(document.RootElement, "$schema"), problems), problems);
        }
    }

    /// <summary>Reads a record from a file.</summary>
    /// <exception cref="InvalidDocumentException">The record cannot be used; carries all problems.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    public static RecordDocument Load(string path, Catalogue? catalogue = null) => Read(JsonText.Load(path), catalogue).OrThrow();

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

    static IEnumerable<Problem> Registered(TeardownRecord record, Catalogue? catalogue)
    {
        if (catalogue is null || catalogue.Checks.IsEmpty) return [];
        var source = new RecordCase(record);
        return catalogue.Checks.SelectMany(check => check.Item.Check(source));
    }
}
