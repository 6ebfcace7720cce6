using System.Text;

namespace FixScore;

/// <summary>The formats as JSON Schemas, draft 2020-12, for editors and other programs. Thread safe.</summary>
/// <remarks>A schema sees the form of a document, not its meaning: what only reading can tell, it lets pass.</remarks>
public static class Schemas
{
    /// <summary>The schema of teardown records, <c>fixscore-record/1</c>.</summary>
    public static string Record { get; } = Embedded("record.schema.json");

    /// <summary>The schema of profiles, <c>fixscore-profile/1</c>, whatever criteria are installed.</summary>
    public static string Profile { get; } = Embedded("profile.schema.json");

    /// <summary>The schema of score documents, <c>fixscore-score/1</c>.</summary>
    public static string Score { get; } = Embedded("score.schema.json");

    /// <summary>The schema of profiles with the criteria that are installed: their ids, and the options of each.</summary>
    /// <remarks>The same catalogue gives the same text everywhere. Points are not checked against the scale, nor is the order of bands.</remarks>
    /// <param name="catalogue">What is installed.</param>
    public static string ProfileFor(Catalogue catalogue) => ProfileSchema.For(Profile, catalogue);

    static string Embedded(string name)
    {
        using var stream = typeof(Schemas).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
