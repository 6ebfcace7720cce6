using System.Collections.Immutable;
using FixScore.Reading;
using FixScore.Records;

namespace FixScore;

/// <summary>A record and the digest that score documents name it by.</summary>
/// <param name="Record">The record.</param>
/// <param name="Digest"><c>sha256:</c> and the SHA-256 of its RFC 8785 form without <c>$schema</c>.</param>
/// <param name="Warnings">What is probably a slip, but did not stand in the way.</param>
public sealed record RecordDocument(TeardownRecord Record, string Digest, ImmutableArray<LocatedProblem> Warnings)
{
    /// <summary>A record made in code, checked as if it had been read. Its digest is that of what <see cref="RecordFile.Write"/> writes.</summary>
    /// <param name="record">The record.</param>
    /// <param name="catalogue">Whose record checks run too; <c>null</c> for none.</param>
    /// <exception cref="InvalidDocumentException">The record cannot be used; carries all problems, without lines and columns.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An enumeration holds a value that it does not name.</exception>
    public static RecordDocument Of(TeardownRecord record, Catalogue? catalogue = null)
    {
        var read = RecordFile.Read(Written(record), catalogue);
        ImmutableArray<LocatedProblem> problems = [.. read.Problems.Select(problem => new LocatedProblem(problem.Problem, 0, 0))];
        return read.IsValid ? new(record, read.Value.Digest, problems) : throw new InvalidDocumentException(problems);
    }

    static byte[] Written(TeardownRecord record)
    {
        try
        {
            return RecordFile.ToJson(record);
        }
        catch (InvalidOperationException)
        {
            throw Unwritable("json.too-deep", "Conditions are nested too deep.", "No record needs more than a few levels.");
        }
        catch (ArgumentException failure) when (failure is not ArgumentOutOfRangeException)
        {
            throw Unwritable("lone-surrogate", "A text holds half of a surrogate pair.", "Correct the text.");
        }
    }

    static InvalidDocumentException Unwritable(string code, string text, string hint) =>
        new([new(Problem.Of(Severity.Error, Pointer.Root, code, text, hint), 0, 0)]);
}
