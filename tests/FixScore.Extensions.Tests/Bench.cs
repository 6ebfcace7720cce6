namespace FixScore.Extensions.Tests;

/// <summary>Loads sample plugins and scores with them.</summary>
static class Bench
{
    public static Catalogue With(params IEnumerable<string> files)
    {
        var builder = new CatalogueBuilder();
        foreach (var file in files) builder.AddFile(new(file), Workspace.Trusting);
        return builder.Build();
    }

    /// <summary>The codes of all that is wrong with a file.</summary>
    public static string[] CodesOf(string file) => [.. Refused(file).Problems.Select(problem => problem.Code)];

    public static PluginFileException Refused(string file, PluginTerms? terms = null) =>
        Assert.Throws<PluginFileException>(() => new CatalogueBuilder().AddFile(new(file), terms ?? Workspace.Trusting));

    /// <summary>The score of the record by a profile whose leaves, equally heavy, are the criteria.</summary>
    public static ScoreDocument Score(Catalogue catalogue, ScoringMode mode, params string[] criteria) =>
        Scorer.Score(RecordFile.Load(Workspace.Record, catalogue), Profile(catalogue, criteria), mode);

    public static Profile Profile(Catalogue catalogue, params string[] criteria) => ProfileFile.Read(System.Text.Encoding.UTF8.GetBytes($$"""
        {
          "format": "fixscore-profile/1", "id": "samples", "version": "1.0.0", "title": "A test", "status": "own",
          "source": { "title": "A test", "locator": "none", "date": "2026-01-01" },
          "scale": { "min": 0, "max": 10, "decimals": 1, "rounding": "half-up" },
          "root": { "id": "total", "aggregate": "weighted-arithmetic", "of": [
            {{string.Join(", ", criteria.Select((id, i) => $$"""{ "id": "leaf-{{i}}", "weight": 1, "criterion": "{{id}}" }"""))}} ] }
        }
        """), catalogue).OrThrow();
}
