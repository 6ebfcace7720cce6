using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using FixScore.Tests.Writing;

namespace FixScore.Tests.Schemas;

/// <summary>Reader and schema agree on texts that nobody thought of: what the reader takes, the schema takes, and a fault of form is one to both.</summary>
public sealed class DamagedAgreementTests
{
    const int Cases = 4000;

    // Other faults are of meaning: whether ids are there, and what members say together.
    static readonly string[] OfForm =
        ["wrong-type", "missing-member", "unknown-member", "unknown-word", "wrong-text", "too-few", "negative", "number-range", "not-whole", "empty-range"];

    static readonly Gen<(int Kind, int At, int Other)[]> Changes = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 100_000], Gen.Int[0, 100_000]).Array[1, 2];

    [Fact]
    public void Reader_and_schema_refuse_the_same_damaged_records() =>
        All([EveryMember.Text, Texts.Bench, Texts.Example("record.example.json")], text => Compare(text, Texts.Record(text).Problems, JsonSchemas.Record));

    [Fact]
    public void Reader_and_schema_refuse_the_same_damaged_profiles() =>
        All([Texts.Profile, Texts.Example("profile.example.json")], text => Compare(text, Texts.ProfileOf(text).Problems, JsonSchemas.Profile));

    static void Compare(string text, IEnumerable<LocatedProblem> problems, Json.Schema.JsonSchema schema)
    {
        var errors = problems.Select(each => each.Problem).Where(problem => problem.Severity == Severity.Error).ToArray();
        var takes = schema.Takes(Encoding.UTF8.GetBytes(text));
        if (errors.Length == 0) Assert.True(takes, "Only the schema refuses " + text);
        var form = errors.Where(problem => OfForm.Contains(problem.Code) && !HangsOnWhatIsInstalled(problem)).Select(problem => $"{problem.Code} {problem.At}");
        if (takes) Assert.Empty(form);
    }

    // Options are described by the criterion, and a patch spoils what it is applied to.
    static bool HangsOnWhatIsInstalled(Problem problem) =>
        problem.At.Text.Contains("/options/", StringComparison.Ordinal) || problem.Message.StartsWith("Under this reading", StringComparison.Ordinal);

    // The same cases in every run.
    static void All(string[] texts, Action<string> check) => Assert.All(Enumerable.Range(1, Cases), i =>
    {
        var text = JsonNode.Parse(texts[i % texts.Length])!;
        foreach (var (kind, at, other) in Changes.Generate(new PCG((uint)i, 7), null, out _)) Damage.ChangeMember(text, kind, at, other);
        check(text.ToJsonString());
    });
}
