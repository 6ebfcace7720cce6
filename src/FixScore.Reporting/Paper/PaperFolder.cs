using System.Collections.Immutable;
using System.Text;
using FixScore.Reporting.Figures;
using FixScore.Reporting.Tables;

namespace FixScore.Reporting.Paper;

/// <summary>A folder for a paper: tables, figures, a paragraph on methods, and the sources to make all of it again, byte for byte.</summary>
public static class PaperFolder
{
    /// <summary>The files, in order.</summary>
    /// <param name="input">What it is made of.</param>
    public static ImmutableArray<PaperFile> Of(PaperInput input) =>
    [
        new("METHODS.md", Encoding.UTF8.GetBytes(MethodsText.Of(input))),
        .. input.Records.Select(record => new PaperFile("records/" + record.Name, record.Bytes)),
        .. input.Profiles.Select(profile => new PaperFile("profiles/" + profile.Name, profile.Bytes)),
        .. ComparisonTables.Of(input.Comparison).AddRange(input.More).SelectMany(Forms),
        new("figures/places.svg", ComparisonFigures.Places(input.Comparison, input.Names)),
        .. input.Comparison.Profiles.Select((profile, index) =>
            new PaperFile($"figures/scores-{Slug(profile)}.svg", ComparisonFigures.Scores(input.Comparison, input.Names, index))),
        .. input.Studies.Select(study => new PaperFile($"figures/acceptability-{Slug(study.Name)}.svg", StudyFigures.Acceptability(study, input.Names))),
    ];

    static IEnumerable<PaperFile> Forms(ResultTable table) =>
    [
        new($"tables/{table.Name}.csv", CsvForm.Of(table)),
        new($"tables/{table.Name}.parquet", ParquetForm.Of(table)),
        new($"tables/{table.Name}.tex", LatexForm.Of(table)),
    ];

    static string Slug(string profile) => profile.Replace('@', '-');
}
