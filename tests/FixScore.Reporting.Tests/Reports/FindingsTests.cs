using System.Collections.Immutable;
using System.Globalization;
using FixScore.Records;
using FixScore.Reporting.Blocks;
using FixScore.Reporting.Reports;
using FixScore.Requirements.Batteries;
using FixScore.Requirements.Ecodesign;
using FixScore.Requirements.PairingLaws;

namespace FixScore.Reporting.Tests;

/// <summary>What a report says of software ties, the boot lock, documents, spares and law.</summary>
public sealed class FindingsTests
{
    const string Hostile = "</td><script>alert(1)</script> | `x` *y* [z](http://invalid) {0} \u001b[2J\r\n## \u202Egnp\u2066";

    static readonly Catalogue Laws = Catalogue.Of(new EcodesignPlugin(), new BatteriesPlugin(), new PairingLawsPlugin());
    static readonly CultureInfo Plain = CultureInfo.InvariantCulture;
    static readonly TeardownRecord Slate = Bench.Judge("larkfield-slate-2", "bench-balanced").Record;
    static readonly TeardownRecord Plinth = Bench.Judge("ostravane-plinth-11", "bench-balanced").Record;

    static ImmutableArray<Section> Sections(TeardownRecord record, CultureInfo culture)
    {
        var source = new RecordCase(record);
        var date = record.Assessment.Date;
        return
        [
            new TrialsSection(culture).Of(source),
            new LocksSection(culture).Of(source),
            new DocumentsSection(culture).Of(source),
            new SparesSection(culture).Of(source),
            new RequirementsSection(culture).Of(record, date, [.. Laws.Requirements.Select(set => (set.Item.Info, set.Check(source, date, default)))]),
        ];
    }

    static IEnumerable<Block> All(IEnumerable<Block> blocks) => blocks.SelectMany(block => block is Section section ? All(section.Blocks).Prepend(block) : [block]);

    static IEnumerable<Block> Trials(TeardownRecord record) => All([new TrialsSection(Plain).Of(new RecordCase(record))]);

    static SwapTrial Repeated(SwapTrial trial, string id, params OneOf<SwapResult>[] results) => trial with
    {
        Id = id,
        Checks = [.. trial.Checks.Select((check, index) => check with { Result = index < results.Length ? results[index] : SwapResult.Works })],
    };

    [Theory]
    [InlineData("larkfield-slate-2", "")]
    [InlineData("larkfield-slate-2", "de-DE")]
    [InlineData("ostravane-plinth-11", "")]
    [InlineData("ostravane-plinth-11", "de-DE")]
    public void The_sections_read_as_approved(string record, string culture) => Approved.Matches(
        $"findings-{record}{(culture.Length > 0 ? $"-{culture}" : "")}.md",
        MarkdownForm.Of(Sections(Bench.Judge(record, "bench-balanced").Record, CultureInfo.GetCultureInfo(culture))));

    [Fact]
    public void The_same_record_gives_the_same_text() =>
        Assert.Equal(MarkdownForm.Of(Sections(Plinth, Plain)), MarkdownForm.Of(Sections(Plinth with { }, Plain)));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Without_observations_a_section_is_one_sentence(bool isRecorded)
    {
        var record = isRecorded
            ? Slate with { Swaps = [], Locks = [], Documentation = [], Spares = [] }
            : Slate with { Swaps = default, Locks = default, Documentation = default, Spares = default };
        var sections = Sections(record, Plain)[..4];
        Assert.All(sections, section => Assert.IsType<Prose>(Assert.Single(section.Blocks)));
        Assert.All(sections, section => Assert.Equal(!isRecorded, ((Prose)section.Blocks[0]).Text.Contains("not recorded", StringComparison.Ordinal)));
        Assert.IsType<Prose>(Assert.Single(new RequirementsSection(Plain).Of(record, record.Assessment.Date, []).Blocks));
    }

    [Fact]
    public void A_record_with_nothing_but_a_part_has_all_sections()
    {
        var bare = new TeardownRecord { Id = "bare", Device = Slate.Device, Assessment = Slate.Assessment with { Units = default }, Parts = [Slate.Parts[0]] };
        Assert.All(Sections(bare, Plain), section => Assert.NotEmpty(section.Blocks));
    }

    [Fact]
    public void Every_row_has_a_cell_for_every_column() => Assert.All(
        All([.. Sections(Slate, Plain), .. Sections(Plinth, Plain)]).OfType<Grid>(), grid => Assert.All(grid.Rows, row => Assert.Equal(grid.Columns.Length, row.Length)));

    [Fact]
    public void Many_trials_are_listed_and_their_marks_are_numbers()
    {
        var control = Slate.Swaps[0];
        var blocks = Trials(Slate with { Swaps = [.. Slate.Swaps, .. Enumerable.Range(0, 30).Select(index => Repeated(control, $"control-again-{index}"))] }).ToArray();
        Assert.Contains(blocks.OfType<Prose>(), prose => prose.Text.Contains("the trials are listed", StringComparison.Ordinal));
        var list = blocks.OfType<Grid>().First(grid => grid.Caption == "Trials");
        Assert.Equal(36, list.Rows.Length);
        Assert.Equal("36", list.Rows[^1][0].Text);
        Assert.Equal("control-again-29", list.Rows[^1][1].Text);
        Assert.Contains(blocks.OfType<Grid>(), grid => grid.Caption == "What follows" && grid.Rows.Length > 0);
    }

    [Fact]
    public void Trials_that_contradict_each_other_prove_nothing()
    {
        var flagged = Plinth.Swaps.First(trial => trial.Id == "battery-b-in-a");
        var context = All([new TrialsSection(Plain).Of(new RecordCase(Plinth with { Swaps = [.. Plinth.Swaps, Repeated(flagged, "battery-b-in-a-again")] }))])
            .OfType<Section>().First(section => section.Title == "Boot lock locked, software 7.2.0, no procedure");
        Assert.Contains(context.Blocks.OfType<Prose>(), prose => prose.Tone == Tone.Mind && prose.Text.Contains("battery-b-in-a, battery-b-in-a-again cannot all be right", StringComparison.Ordinal));
        Assert.DoesNotContain(context.Blocks.OfType<Grid>().First().Columns, column => column.Title == "Verdict");
        Assert.DoesNotContain(context.Blocks.OfType<Prose>(), prose => prose.Text.StartsWith("Proven", StringComparison.Ordinal));
    }

    [Fact]
    public void A_part_of_another_device_a_loose_spare_and_an_own_part_have_marks_of_their_own()
    {
        var matrix = Trials(Slate).OfType<Grid>().First();
        var battery = matrix.Rows.Single(row => row[0].Text.StartsWith("battery (", StringComparison.Ordinal) || row[0].Text == "battery");
        Assert.Equal(["-", "-", "x", "s", "-", "-"], battery.Skip(1).Take(6).Select(cell => cell.Text));
        Assert.Equal(["+", "+", "+", "+", "!", "+"], matrix.Rows[^1].Skip(1).Take(6).Select(cell => cell.Text));
    }

    [Fact]
    public void What_is_not_recorded_is_never_a_zero()
    {
        var record = Slate with
        {
            Locks = [.. Slate.Locks.Select(trial => trial with { WaitDays = null, WipesData = null, WarrantyNotice = null, Outcome = default })],
            Spares = [.. Slate.Spares.Select(spare => spare with { Price = null, Years = null, DeliveryDays = null, FastenersIncluded = null, Audience = default })],
            Documentation = [.. Slate.Documentation.Select(document => document with { Audience = default, Cost = default, Years = null })],
        };
        Assert.All(Sections(record, Plain)[1].Blocks.OfType<Grid>().First().Rows, row => Assert.All(row.Skip(3).Take(4), cell => Assert.Equal("not recorded", cell.Text)));
        Assert.All(Sections(record, Plain)[2].Blocks.OfType<Grid>().Single().Rows, row => Assert.All(row.Skip(2).Take(3), cell => Assert.Equal("not recorded", cell.Text)));
        Assert.All(Sections(record, Plain)[3].Blocks.OfType<Grid>().Single().Rows, row => Assert.All(row.Skip(1).Take(4).Append(row[6]), cell => Assert.Equal("not recorded", cell.Text)));
    }

    [Fact]
    public void Hostile_text_stays_text()
    {
        var record = Slate with
        {
            Parts = [.. Slate.Parts.Select(part => part with { Name = Hostile })],
            Assessment = Slate.Assessment with { Units = [.. Slate.Assessment.Units.Select(unit => unit with { ModelCode = Hostile, Software = Hostile })] },
            Swaps = [.. Slate.Swaps.Select(trial => trial with { Note = Hostile, Software = Hostile, Checks = [.. trial.Checks.Select(check => check with { Function = Hostile + check.Function })] })],
            Locks = [.. Slate.Locks.Select(trial => trial with { Note = Hostile, Losses = [.. trial.Losses.Select(loss => loss with { Function = Hostile })] })],
            Documentation = [.. Slate.Documentation.Select(document => document with { Note = Hostile })],
            Spares = [.. Slate.Spares.Select(spare => spare with { Note = Hostile })],
            Evidence = [.. Slate.Evidence.Select(item => item with { Ref = Hostile })],
        };
        var sections = Sections(record, Plain);
        var markdown = MarkdownForm.Of(sections);
        Assert.DoesNotMatch(@"(?<!\\)[<>]", markdown);
        Assert.All([markdown, HtmlForm.Of(sections).ToString()!, TextForm.Of(sections, 80, unfolded: true)], text => Assert.DoesNotContain(text, letter => letter is '\u001b' or '\r' or '\u202E' or '\u2066'));
        Assert.DoesNotContain("<script", HtmlForm.Of(sections).ToString(), StringComparison.Ordinal);
    }
}
