using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using FixScore.Canonical;
using FixScore.Records;
using FixScore.Testing;
using FixScore.Tests.Schemas;

namespace FixScore.Tests.Writing;

/// <summary>What is written reads back as the same record.</summary>
public sealed partial class RecordWriterTests
{
    public static TheoryData<string> Controls => [.. Corpus.Files.Where(file => file.IsRecord && file.Read().Value is not null).Select(file => file.File)];

    // The demo records state two defaults of the format; without them they are as they would be written.
    [Fact]
    public void Demo_records_keep_their_digests() => Assert.All(Texts.Demos, file =>
    {
        var text = File.ReadAllText(file).Replace("\"foldable\": false,", "", StringComparison.Ordinal);
        AssertKeeps(Encoding.UTF8.GetBytes(OnlyOne().Replace(text, "")));
    });

    [GeneratedRegex("\"count\": 1,")]
    private static partial Regex OnlyOne();

    [Theory]
    [MemberData(nameof(Controls))]
    public void Valid_records_of_the_corpus_keep_their_digests(string name) => AssertKeeps(Corpus.Named(name).Bytes);

    [Fact]
    public void The_example_keeps_its_meaning() => AssertStable(RecordFile.ToJson(Texts.Record(Texts.Example("record.example.json")).OrThrow().Record));

    [Fact]
    public void Records_made_in_code_keep_their_meaning() => Assert.All(SampleRecords.All.Concat(RecordGenerator.Many(200)), record =>
    {
        var written = RecordFile.ToJson(record);
        Assert.True(JsonSchemas.Record.Takes(written));
        AssertStable(written);
    });

    static void AssertKeeps(byte[] text)
    {
        var read = RecordFile.Read(text).OrThrow();
        var written = RecordFile.ToJson(read.Record);
        Assert.Equal(read.Digest, RecordFile.Read(written).OrThrow().Digest);
        AssertStable(written);
    }

    static void AssertStable(byte[] written) =>
        Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(RecordFile.ToJson(RecordFile.Read(written).OrThrow().Record)));

    // Every member of the format once, none with its default: nothing may get lost.
    [Fact]
    public void Every_member_of_the_format_is_written_as_it_was_read()
    {
        var document = RecordFile.Read(Encoding.UTF8.GetBytes(EveryMember.Text));
        Assert.Empty(document.Told());
        Assert.Equal(Digest.Of(JsonElement.Parse(EveryMember.Text)), Digest.Of(JsonElement.Parse(RecordFile.ToJson(document.Value!.Record))));
    }

    // The names of all members of the schema, so that a member added there is added here.
    [Fact]
    public void Every_member_of_the_schema_is_in_that_record()
    {
        var names = EveryMember.NamesIn(JsonElement.Parse(EveryMember.Text)).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(EveryMember.NamesOfSchema(JsonElement.Parse(FixScore.Schemas.Record)).Except(names).Except(["$schema"]));
    }

    [Fact]
    public void What_is_left_out_or_has_its_default_is_not_written()
    {
        var text = Texts.TinyWith("""
            { "device": { "maker": "Example Works", "model": "Slate One", "kind": "smartphone", "foldable": false },
              "parts": [{ "id": "cell", "role": "battery", "inert": false, "reach": "not-tried", "specs": [] }, { "id": "plate", "role": "frame", "inert": true }],
              "joints": [{ "id": "j", "kind": "screw", "joins": ["cell", "plate"], "count": 1, "integral": false, "under": [] }], "tools": [] }
            """).OrThrow().Record;
        Assert.Equal("""
            {
              "format": "fixscore-record/1",
              "id": "corpus",
              "device": {
                "maker": "Example Works",
                "model": "Slate One",
                "kind": "smartphone"
              },
              "assessment": {
                "assessor": "bench",
                "date": "2026-01-15",
                "units": [
                  {
                    "id": "u1"
                  }
                ]
              },
              "parts": [
                {
                  "id": "cell",
                  "role": "battery"
                },
                {
                  "id": "plate",
                  "role": "frame"
                }
              ],
              "joints": [
                {
                  "id": "j",
                  "joins": [
                    "cell",
                    "plate"
                  ],
                  "kind": "screw"
                }
              ],
              "tools": []
            }

            """, Encoding.UTF8.GetString(RecordFile.ToJson(text)));
    }

    [Theory]
    [InlineData("1.50", "1.5")]
    [InlineData("1e-12", "0.000000000001")]
    [InlineData("-0.0", "0")]
    [InlineData("9.99999999999999e14", "999999999999999")]
    public void Numbers_are_written_plainly(string read, string written)
    {
        var record = Texts.TinyWith($$"""{ "observations": [{ "name": "acme.n", "value": {{read}} }] }""").OrThrow().Record;
        Assert.Contains($"\"value\": {written}\n", Encoding.UTF8.GetString(RecordFile.ToJson(record)), StringComparison.Ordinal);
    }

    [Fact]
    public void Letters_are_written_as_they_are() => Assert.Contains(
        "Prüfstand 漢字 <&'>", Encoding.UTF8.GetString(RecordFile.ToJson(SampleRecords.Minimal with { Findings = [new Remark { Topic = "x", Text = "Prüfstand 漢字 <&'>" }] })), StringComparison.Ordinal);
}
