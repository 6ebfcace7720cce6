using System.Globalization;
using FixScore.Criteria.Disassembly;
using FixScore.Criteria.Documentation;
using FixScore.Criteria.Spares;
using FixScore.Criteria.Support;

namespace FixScore.Laws.Tests;

/// <summary>The profiles under test, bound to the real criteria or to ones that answer what a test says.</summary>
static class Rules
{
    static readonly Catalogue Installed =
        Catalogue.Of(new DisassemblyPlugin(), new DocumentationPlugin(), new SparesPlugin(), new SupportPlugin());

    public static Profile Europe { get; } = Load("eu-2023-1669", Installed);

    public static Profile France { get; } = Load("fr-r541-214", Installed);

    /// <summary>The European profile with criteria that all score the same.</summary>
    public static Profile EuropeAnswering(decimal points) => Load("eu-2023-1669", Answering((_, _) => points));

    /// <summary>The French profile with criteria that score a share of their scale.</summary>
    public static Profile FranceAnswering(Func<string, decimal> share) =>
        Load("fr-r541-214", Answering((id, scale) => scale.Min + share(id) * (scale.Max - scale.Min)));

    public static ScoreDocument Score(this RecordBuilder builder, Profile? profile = null) =>
        Scorer.Score(new(builder.Build(), "sha256:" + new string('0', 64), []), profile ?? Europe);

    /// <summary>The line of a node, or of a role under it; a role with one part is written as the part alone.</summary>
    public static ScoreNode At(this ScoreDocument score, string path) => score.Find(path) ?? throw new ArgumentException(path);

    /// <summary>The weight with two decimals, as the law prints it; <c>null</c> when the score has no such line.</summary>
    public static string? Weight(this ScoreDocument score, string path) => score.Find(path)?.Weight?.ToString("0.00", CultureInfo.InvariantCulture);

    public static ScoreReading Reading(this ScoreDocument score, string id) => Assert.Single(score.Readings, reading => reading.Id == id);

    static ScoreNode? Find(this ScoreDocument score, string path) => score.Nodes.FirstOrDefault(
        node => node.Path == "index/" + path || node.Path.StartsWith($"index/{path}/", StringComparison.Ordinal));

    static Profile Load(string id, Catalogue catalogue) =>
        ProfileFile.Load(Path.Combine(AppContext.BaseDirectory, "Profiles", id + ".json"), catalogue);

    static Catalogue Answering(Func<string, Scale, decimal> points) => Catalogue.Of(new AnsweringPlugin(Installed, points));
}
