using System.Text;
using System.Text.Json;
using FixScore.Cli.Tests.Support;
using Parquet;

namespace FixScore.Cli.Tests;

public sealed class ScoreLinesTests
{
    static readonly byte[] Slate2 = OneLine(Tablets.Slate2), Slate3 = OneLine(Tablets.Slate3);

    [Fact]
    public void A_record_a_line_in_is_a_score_document_a_line_out_in_the_same_order_and_the_same_document()
    {
        var ran = Fixscore.RunOn(Lines(Slate3, Slate2, Slate3), "score", "-", "--ndjson", "--profile", "bench-balanced");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var lines = ran.Out.TrimEnd('\n').Split('\n');
        Assert.Equal(["larkfield-slate-3", "larkfield-slate-2", "larkfield-slate-3"], lines.Select(line => Member(line, "record").GetProperty("id").GetString()));
        Assert.Equal(Member(Alone(Slate2), "digest").GetString(), Member(lines[1], "digest").GetString());
        Assert.True(JsonElement.DeepEquals(JsonDocument.Parse(Alone(Slate2)).RootElement, JsonDocument.Parse(lines[1]).RootElement));
    }

    [Fact]
    public void A_bad_line_becomes_its_problems_with_its_number_and_the_rest_goes_on()
    {
        var ran = Fixscore.RunOn(Lines(Slate3, "{\"format\":"u8.ToArray(), "{}"u8.ToArray(), Slate2), "score", "-", "--ndjson", "--profile", "bench-balanced");
        var lines = ran.Out.TrimEnd('\n').Split('\n');
        Assert.Equal((3, 4), (ran.Code, lines.Length));
        Assert.Equal("2 of 4 records could not be scored; the first is line 2. Each has its problems in its place.\n", ran.Error);
        Assert.Equal((2, "json.syntax", 11), Problem(lines[1]));
        Assert.Equal(3, Member(lines[2], "line").GetInt64());
        Assert.True(Member(lines[2], "problems").GetArrayLength() > 3);
        Assert.Equal("larkfield-slate-2", Member(lines[3], "record").GetProperty("id").GetString());
    }

    [Fact]
    public void Blank_lines_a_byte_order_mark_and_carriage_returns_are_passed_over_and_counted()
    {
        byte[] input = [.. "\uFEFF"u8, .. Slate3, .. "\r\n\r\n  \n"u8, .. "nonsense"u8];
        var lines = Fixscore.RunOn(input, "score", "-", "--ndjson", "--profile", "bench-balanced").Out.TrimEnd('\n').Split('\n');
        Assert.Equal(2, lines.Length);
        Assert.Equal(4, Problem(lines[1]).Line);
    }

    [Fact]
    public void A_record_that_the_profile_is_not_for_is_a_bad_line()
    {
        var phone = OneLine(Installed.Resources.Bytes("demo/larkfield-slate-3.json"), text => text.Replace("\"slate-tablet\"", "\"laptop\"", StringComparison.Ordinal));
        var ran = Fixscore.RunOn(Lines(phone), "score", "-", "--ndjson", "--profile", "eu-2023-1669");
        Assert.Equal(3, ran.Code);
        Assert.Equal((1, "profile-not-for-kind", 1), Problem(ran.Out.TrimEnd('\n')));
    }

    [Fact]
    public void A_failing_plugin_is_told_in_the_line_and_by_the_exit_code()
    {
        using var folder = new TemporaryFolder();
        var profile = folder.Write("half.json", FailingPlugin.Profile);
        var ran = Fixscore.RunOn(Lines(Slate3), "score", "-", "--ndjson", "--profile", profile, "--trust-once", "--plugin", FailingPlugin.File);
        Assert.Equal((4, "plugin-failed"), (ran.Code, Problem(ran.Out.TrimEnd('\n')).Code));
        Assert.Equal(0, Fixscore.RunOn(Lines(Slate3), "score", "-", "--ndjson", "--tolerant", "--profile", profile, "--trust-once", "--plugin", FailingPlugin.File).Code);
    }

    [Fact]
    public void Nothing_in_is_nothing_out() => Assert.Equal(new Ran(0, "", ""), Fixscore.RunOn(default, "score", "-", "--ndjson", "--profile", "bench-balanced"));

    [Fact]
    public void More_lines_than_a_batch_stay_in_order()
    {
        var many = Enumerable.Range(0, 600).Select(i => Encoding.UTF8.GetBytes($"{{\"id\":{i}}}")).ToArray();
        var ran = Fixscore.RunOn(Lines(many), "score", "-", "--ndjson", "--profile", "bench-balanced");
        Assert.Equal(Enumerable.Range(1, 600).Select(i => (long)i), ran.Out.TrimEnd('\n').Split('\n').Select(line => Member(line, "line").GetInt64()));
    }

    [Fact]
    public async Task A_name_that_ends_in_parquet_gets_a_table_of_totals_and_lines()
    {
        using var folder = new TemporaryFolder();
        var file = folder.File("scores.parquet");
        var ran = Fixscore.RunOn(Lines(Slate3, "{}"u8.ToArray()), "score", "-", "--ndjson", "--profile", "bench-balanced", "--out", file);
        Assert.Equal((3, $"1 scores written to {file}.\n"), (ran.Code, ran.Out));
        await using var reader = await ParquetReader.CreateAsync(file);
        using var group = reader.OpenRowGroupReader(0);
        var (low, exact) = (new double?[group.RowCount], new string[group.RowCount]);
        await group.ReadAsync<double>(reader.Schema.FindDataField("low"), low);
        await group.ReadAsync(reader.Schema.FindDataField("lowExact"), exact);
        var total = Member(Alone(Slate3), "total").GetProperty("low").GetString()!;
        Assert.Equal(total, exact[0]);
        Assert.Equal((double)decimal.Parse(total, System.Globalization.CultureInfo.InvariantCulture), low[0]);
        Assert.Null(low[^1]);
    }

    [Theory]
    [InlineData("--ndjson takes one file, or - for standard input.", "score", "a.ndjson", "b.ndjson", "--ndjson", "--profile", "bench-balanced")]
    [InlineData("--ndjson writes whole score documents; --explain is for people.", "score", "-", "--ndjson", "--explain", "--profile", "bench-balanced")]
    public void What_lines_cannot_do_is_said(string says, params string[] arguments)
    {
        var ran = Fixscore.Run(arguments);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    static string Alone(byte[] record) => Fixscore.RunOn(record, "score", "-", "--json", "--profile", "bench-balanced").Out;

    static byte[] Lines(params byte[][] lines) => [.. lines.SelectMany(line => line.Append((byte)'\n'))];

    static JsonElement Member(string json, string name) => JsonDocument.Parse(json).RootElement.GetProperty(name);

    static (long Line, string? Code, int Column) Problem(string line)
    {
        var first = Member(line, "problems")[0];
        return (first.GetProperty("line").GetInt64(), first.GetProperty("code").GetString(), first.GetProperty("column").GetInt32());
    }

    static byte[] OneLine(byte[] record, Func<string, string>? change = null)
    {
        var text = JsonSerializer.Serialize(JsonDocument.Parse(record).RootElement);
        return Encoding.UTF8.GetBytes(change is null ? text : change(text));
    }
}
