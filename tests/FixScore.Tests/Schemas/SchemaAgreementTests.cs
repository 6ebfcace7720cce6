using System.Text;

namespace FixScore.Tests.Schemas;

/// <summary>The published schemas and the reader agree, as far as a schema can see.</summary>
public sealed class SchemaAgreementTests
{
    public static TheoryData<string> Parsed => [.. Corpus.Files.Where(file => !file.Syntax && !file.File.Contains("depth-", StringComparison.Ordinal)).Select(file => file.File)];

    [Theory]
    [MemberData(nameof(Parsed))]
    public void A_schema_refuses_just_the_faults_of_form(string name)
    {
        var file = Corpus.Named(name);
        Assert.Equal(file.Problems.All(problem => !problem.Schema), (file.IsRecord ? JsonSchemas.Record : JsonSchemas.Profile).Takes(file.Bytes));
    }

    [Fact]
    public void Every_demo_record_is_taken_by_schema_and_reader() => Assert.All(Texts.Demos, file =>
    {
        Assert.True(JsonSchemas.Record.Takes(File.ReadAllBytes(file)));
        Assert.Empty(RecordFile.Read(File.ReadAllBytes(file)).Problems);
    });

    [Fact]
    public void There_are_five_demo_records() => Assert.Equal(5, Texts.Demos.Count());

    [Fact]
    public void The_example_record_is_taken_by_schema_and_reader()
    {
        var text = Texts.Example("record.example.json");
        Assert.True(JsonSchemas.Record.Takes(Encoding.UTF8.GetBytes(text)));
        Assert.Empty(Texts.Record(text).Told());
    }

    [Fact]
    public void The_example_profile_is_taken_by_schema_and_reader()
    {
        var text = Texts.Example("profile.example.json");
        Assert.True(JsonSchemas.Profile.Takes(Encoding.UTF8.GetBytes(text)));
        Assert.Empty(Texts.ProfileOf(text).Told());
    }

    [Fact]
    public void The_example_score_is_taken_by_the_schema() =>
        Assert.True(JsonSchemas.From(FixScore.Schemas.Score).Takes(Encoding.UTF8.GetBytes(Texts.Example("score.example.json"))));
}
