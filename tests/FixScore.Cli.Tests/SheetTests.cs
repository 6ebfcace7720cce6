using System.Text.Json;
using FixScore.Cli.Installed;
using FixScore.Cli.Tests.Support;

namespace FixScore.Cli.Tests;

/// <summary>The bench sheet in its forms. What it says is common practice, no source, unless the sheet names one.</summary>
public sealed class SheetTests
{
    static JsonElement Json(byte[] record, params string[] more) => JsonDocument.Parse(Fixscore.RunOn(record, ["sheet", "-", "--json", .. more]).Out).RootElement;

    static string[] Names(JsonElement element) => [.. element.EnumerateObject().Select(member => member.Name)];

    [Theory]
    [InlineData("")]
    [InlineData("de-DE")]
    public void A_part_is_a_work_order_with_boxes_to_tick(string culture)
    {
        var ran = Fixscore.RunOn(Torch.Record, "sheet", "-", "--part", "cell", "--culture", culture);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Approved.Matches($"sheet-cell{(culture.Length > 0 ? "-" + culture : "")}", ran.Out);
        Assert.DoesNotContain(ran.Out.Split('\n'), line => line.Length > 80);
    }

    [Fact]
    public void Markdown_has_the_same_sections() =>
        Approved.Matches("sheet-cell.md", Fixscore.RunOn(Torch.Record, "sheet", "-", "--part", "cell", "--form", "markdown").Out);

    [Fact]
    public void Without_a_part_those_that_cannot_be_freed_are_listed_with_the_reason() => Approved.Matches("sheet-all", Fixscore.RunOn(Torch.Record, "sheet", "-").Out);

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    public void A_part_named_script_is_text(string form)
    {
        var ran = Fixscore.RunOn(Tablets.Named(Tablets.Slate2, "<script>alert(1)</script>\u001b[2J\u202E"), "sheet", "-", "--part", "battery", "--form", form);
        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain(ran.Out, letter => letter != '\n' && char.IsControl(letter) || letter == '\u202E');
        if (form == "text") return;
        Assert.Contains(form == "html" ? "&lt;script&gt;" : "\\<script\\>", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", ran.Out.Replace("\\<script", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void As_json_it_is_data()
    {
        var sheet = Json(Torch.Record, "--part", "cell");
        Assert.Equal(["record", "parts", "cautions", "ready", "before", "labels", "operations", "shortest", "screws", "reassembly", "alsoRecorded", "sealing", "after"], Names(sheet));
        Assert.Equal(["unscrew-cover", "unplug-cell", "peel-cell"], sheet.GetProperty("operations").EnumerateArray().Select(each => each.GetProperty("operation").GetString()));
        Assert.Equal([3, 2, 1], sheet.GetProperty("reassembly").EnumerateArray().Select(each => each.GetProperty("undoes").GetInt32()));
    }

    [Theory]
    [InlineData("brindlewick-pane-10")]
    [InlineData("larkfield-slate-2")]
    [InlineData("larkfield-slate-3")]
    [InlineData("ostravane-plinth-11")]
    [InlineData("sallowmere-diptych-6")]
    public void Every_demo_record_has_a_sheet_for_all_its_parts(string name)
    {
        var sheet = Json(Resources.Bytes($"demo/{name}.json"));
        Assert.NotEmpty(sheet.GetProperty("operations").EnumerateArray());
        Assert.Contains(sheet.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.StartsWith("Lithium cells:", StringComparison.Ordinal));
        Assert.All(sheet.GetProperty("parts").EnumerateArray(), part => Assert.True(part.GetProperty("onSheet").GetBoolean() || part.GetProperty("reachable").ValueKind == JsonValueKind.True || part.TryGetProperty("why", out _)));
    }

    [Fact]
    public void A_role_gives_all_its_parts_in_one_go() =>
        Assert.Equal(["speaker-left", "speaker-right"], Json(Tablets.Slate2, "--part", "speaker").GetProperty("parts").EnumerateArray().Select(each => each.GetProperty("part").GetString()));

    [Fact]
    public void It_is_written_to_a_file()
    {
        using var folder = new TemporaryFolder();
        var ran = Fixscore.RunOn(Torch.Record, "sheet", "-", "--part", "cell", "--form", "html", "--out", folder.File("sheet.html"));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("Bench sheet written to ", ran.Out, StringComparison.Ordinal);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(folder.File("sheet.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "Did you mean 'cell'?", "--part", "cel")]
    [InlineData(2, "'htm' is no word for --form. Did you mean 'html'?", "--form", "htm")]
    [InlineData(5, "cannot be written", "--out", "/nowhere/at/all.txt")]
    public void A_slip_ends_as_in_route(int code, string says, params string[] more)
    {
        var ran = Fixscore.RunOn(Torch.Record, ["sheet", "-", .. more]);
        Assert.Equal((code, ""), (ran.Code, ran.Out));
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_that_cannot_be_used_ends_it_with_3() => Assert.Equal(3, Fixscore.RunOn("{}"u8.ToArray(), "sheet", "-").Code);
}
