using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Html;
using FixScore.Reporting.Reports;

namespace FixScore.Reporting.Tests.Reports;

public sealed class OpeningTests
{
    static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    static TeardownRecord Record(string id) => Bench.Judge(id, "bench-balanced").Record;

    static ImmutableArray<Section> Sections(TeardownRecord record, CultureInfo culture)
    {
        var source = new RecordCase(record);
        return [new RoutesSection(culture).Of(source), new ScrewsSection(culture).Of(source), new AdhesivesSection(culture).Of(source), new ReassemblySection(culture).Of(source)];
    }

    static string Markdown(TeardownRecord record, CultureInfo culture) => MarkdownForm.Of(Sections(record, culture));

    static TeardownRecord Empty => Record("larkfield-slate-2") with { Joints = default, Operations = default, Tools = default, Consumables = default, Sequences = default, Spares = default, Milestones = default };

    // Parts one by one on a frame, each with a screw of its own.
    static TeardownRecord Many(int count, Func<int, string> role)
    {
        var frame = new Part { Id = "frame", Role = "frame", Inert = true };
        return Empty with
        {
            Parts = [frame, .. Enumerable.Range(1, count - 1).Select(number => new Part { Id = $"part-{number}", Role = role(number) })],
            Joints = [.. Enumerable.Range(1, count - 1).Select(number => new Joint { Id = $"screws-{number}", Joins = ["frame", $"part-{number}"], Kind = JointKind.Screw, Under = number > 1 && number % 5 > 0 ? [$"part-{number - 1}"] : [], Screw = new("cross", 1.2m, 2m + number % 3) })],
            Tools = [new Tool { Id = "driver", Name = "driver", Class = ToolClass.Basic }],
            Operations = [.. Enumerable.Range(1, count - 1).Select(number => new Operation { Id = $"free-{number}", Action = OperationAction.Unscrew, Tools = ["driver"], Undoes = [$"screws-{number}"], Removes = [$"part-{number}"], Seconds = 20 })],
        };
    }

    static IEnumerable<Block> All(Block block) => block is Section section ? section.Blocks.SelectMany(All).Prepend(section) : [block];

    [Theory]
    [InlineData("larkfield-slate-2", "")]
    [InlineData("larkfield-slate-2", "de-DE")]
    [InlineData("brindlewick-pane-10", "")]
    [InlineData("brindlewick-pane-10", "de-DE")]
    public void Somebody_has_read_it(string record, string culture) =>
        Approved.Matches($"opening-{record}{(culture.Length > 0 ? "." + culture : "")}.md", Markdown(Record(record), CultureInfo.GetCultureInfo(culture)));

    [Fact]
    public void Without_records_each_section_is_a_sentence_that_nothing_is_recorded() => Assert.All(Sections(Empty, Plain), section =>
    {
        var prose = Assert.IsType<Prose>(Assert.Single(section.Blocks));
        Assert.Equal(Tone.Open, prose.Tone);
        Assert.Contains("recorded", prose.Text, StringComparison.Ordinal);
    });

    [Fact]
    public void A_device_without_joints_is_not_one_whose_joints_are_not_recorded()
    {
        var text = Markdown(Empty with { Joints = [] }, Plain);
        Assert.Contains("The record lists no screws.", text, StringComparison.Ordinal);
        Assert.Contains("The record lists no adhesive, tape or gasket.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_picture_stands_before_the_table()
    {
        var picture = new Picture(Markup.Nothing, "routes", "");
        var blocks = new RoutesSection(Plain).Of(new RecordCase(Record("larkfield-slate-2")), picture).Blocks;
        Assert.InRange(blocks.IndexOf(picture), 0, blocks.IndexOf(blocks.OfType<Grid>().Single()) - 1);
    }

    [Fact]
    public void Names_cannot_break_out_of_any_form()
    {
        const string Hostile = "x | y\n# <script>alert(1)</script> \u202E**b** `c`";
        var slate = Record("larkfield-slate-2");
        var record = slate with
        {
            Parts = [.. slate.Parts.Select(part => part with { Name = Hostile })],
            Tools = [.. slate.Tools.Select(tool => tool with { Name = Hostile, Solvent = Hostile })],
            Consumables = [.. slate.Consumables.Select(each => each with { Name = Hostile, Kind = Hostile })],
            Joints = [.. slate.Joints.Select(joint => joint with { Where = Hostile, Note = Hostile })],
            Operations = [.. slate.Operations.Select(operation => operation with { Caution = Hostile, Note = Hostile })],
        };
        var sections = Sections(record, Plain);
        Assert.All([HtmlForm.Of(sections).Html, MarkdownForm.Of(sections), TextForm.Of(sections, 100, unfolded: true)], text => Assert.DoesNotContain('\u202E', text));
        Assert.DoesNotContain("<script", HtmlForm.Of(sections).Html, StringComparison.Ordinal);
        Assert.DoesNotContain(MarkdownForm.Of(sections).Split('\n'), line => line.StartsWith("# ", StringComparison.Ordinal));
        Assert.DoesNotContain("<script", MarkdownForm.Of(sections).Replace("\\<", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_have_a_cell_for_each_column() => Assert.All(
        ((string[])["brindlewick-pane-10", "larkfield-slate-3", "ostravane-plinth-11"]).SelectMany(record => Sections(Record(record), Plain)).SelectMany(All).OfType<Grid>(),
        grid => Assert.All(grid.Rows, row => Assert.Equal(grid.Columns.Length, row.Length)));

    [Fact]
    public void Of_three_hundred_parts_twelve_routes_are_told_in_full_and_the_rest_counted()
    {
        var section = Sections(Many(300, number => number % 10 == 0 ? "speaker" : "bracket"), Plain)[0];
        Assert.Equal(29, section.Blocks.OfType<Grid>().Single().Rows.Length);
        Assert.Equal(12, section.Blocks.OfType<Section>().Count());
        Assert.Contains("17 more are left out", MarkdownForm.Of([section]), StringComparison.Ordinal);
        Assert.Contains("271 other parts are left out", MarkdownForm.Of([section]), StringComparison.Ordinal);
    }

    // The demo's shortest way to the battery is a last resort that bends the cell.
    [Fact]
    public void A_shortest_route_that_harms_the_part_is_flagged_with_ways_that_do_not()
    {
        var blocks = new RoutesSection(Plain).Of(new RecordCase(Record("larkfield-slate-2"))).Blocks;
        Assert.Contains(blocks.OfType<Grid>().Single().Rows, row => row[0].Text.StartsWith("battery", StringComparison.Ordinal) && row[^1].Text == "yes; damages the part");
        Assert.Contains(blocks.OfType<Items>().SelectMany(items => items.Entries), item => item.Tone == Tone.Mind && item.Text.Contains("To keep it: maker-battery (6 steps:", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_that_nothing_undoes_is_told_with_the_reason()
    {
        var slate = Record("larkfield-slate-2");
        var section = new RoutesSection(Plain).Of(new RecordCase(slate with { Operations = [], Sequences = [] }));
        Assert.All(section.Blocks.OfType<Grid>().Single().Rows, row => Assert.Equal("-", row[1].Text));
        Assert.Contains(section.Blocks.OfType<Items>().SelectMany(items => items.Entries), item => item.Tone == Tone.Open && item.Text.StartsWith("battery", StringComparison.Ordinal) && item.Text.Length > 60);
    }

    [Fact]
    public void Where_no_part_has_a_priority_role_the_first_parts_stand_in() =>
        Assert.Equal(24, Sections(Many(50, _ => "bracket"), Plain)[0].Blocks.OfType<Grid>().Single().Rows.Length);

    [Fact]
    public void Screws_that_differ_in_length_alone_are_told_apart_once()
    {
        var items = Sections(Many(10, _ => "speaker"), Plain)[1].Blocks.OfType<Items>().SelectMany(items => items.Entries);
        var mind = Assert.Single(items, item => item.Tone == Tone.Mind);
        Assert.StartsWith("Do not mix S1 (3 mm long), S2 (4 mm long), S3 (2 mm long)", mind.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_count_or_size_that_is_not_recorded_is_never_zero()
    {
        var record = Many(4, _ => "speaker");
        var unknown = record with { Joints = [.. record.Joints.Select(joint => joint with { Count = default, Screw = new(default, default, default) })] };
        var row = Assert.Single(Sections(unknown, Plain)[1].Blocks.OfType<Grid>().Single().Rows);
        Assert.All(row.Skip(1).Take(4), cell => Assert.Equal("not recorded", cell.Text));
    }

    [Fact]
    public void A_time_that_is_not_recorded_is_said_to_be_so()
    {
        var record = Many(4, _ => "speaker");
        var untimed = record with { Operations = [.. record.Operations.Select(operation => operation with { Seconds = null })] };
        Assert.All(Sections(untimed, Plain)[0].Blocks.OfType<Grid>().Single().Rows, row => Assert.Equal("not recorded", row[3].Text));
    }
}
