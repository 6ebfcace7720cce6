using System.Globalization;

namespace FixScore.Reporting.Tests;

public sealed class TextTests
{
    static readonly Shown Plain = new(CultureInfo.InvariantCulture);
    static readonly Shown German = new(CultureInfo.GetCultureInfo("de-DE"));
    static readonly Judgement Slate = Bench.Judge("larkfield-slate-2", "bench-balanced");

    [Fact]
    public void An_interval_is_one_number_when_exact_and_two_when_not()
    {
        Assert.Equal("57 to 63", Plain.Points(new Interval(57, 63)));
        Assert.Equal("57", Plain.Points(new Interval(57m, 57.0m)));
        Assert.Equal("57,5 to 63,25", German.Points(new Interval(57.5m, 63.25m)));
    }

    [Theory]
    [InlineData("1", "100 %")]
    [InlineData("0.9999", "99 %")]
    [InlineData("0.765", "77 %")]
    [InlineData("0", "0 %")]
    public void Only_what_is_whole_is_shown_as_whole(string share, string text) => Assert.Equal(text, Plain.Percent(decimal.Parse(share, CultureInfo.InvariantCulture)));

    [Fact]
    public void Evidence_names_the_entry_its_footage_and_what_else_shows_it()
    {
        var at = Slate.Record.Operations.ToList().FindIndex(operation => operation.Id == "pull-battery-tabs");
        var text = EvidenceText.Of(Slate.Record, [Pointer.Root.Child("operations").Child(at)]);
        Assert.Equal(
            $"/operations/{at} pull-battery-tabs, footage/slate-2-unit-a-open.mp4 0:09:53 to 0:11:07, unit-a, footage/slate-2-unit-b-open.mp4 0:11:53 to 0:14:04, unit-b", text);
    }

    [Theory]
    [InlineData("", "record")]
    [InlineData("/device/kind", "/device/kind")]
    [InlineData("/joints/9999", "/joints/9999")]
    [InlineData("/joints/-1", "/joints/-1")]
    [InlineData("/nothing/0", "/nothing/0")]
    public void A_place_without_an_entry_is_just_its_pointer(string pointer, string text) => Assert.Equal(text, EvidenceText.Of(Slate.Record, [new(pointer)]));

    [Fact]
    public void Many_places_are_cut_and_counted()
    {
        var text = EvidenceText.Of(Slate.Record, [.. Enumerable.Range(0, 20).Select(index => Pointer.Root.Child("x").Child(index))]);
        Assert.EndsWith("/x/11; and 8 more", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_at_several_places_is_said_once() =>
        Assert.Equal(VerdictText.Missing(Slate).Length, VerdictText.Missing(Slate).Select(text => text[..text.LastIndexOf(" (", StringComparison.Ordinal)]).Distinct().Count());

    [Fact]
    public void Notes_hold_every_reason_and_everything_missing()
    {
        var notes = new NotesText(CultureInfo.InvariantCulture).Of(Slate);
        Assert.All(Slate.Score.Nodes.SelectMany(node => node.Reasons), reason => Assert.Contains(notes, line => line.Text.StartsWith(reason.Text, StringComparison.Ordinal)));
        Assert.All(Slate.Score.Nodes.SelectMany(node => node.Missing), missing => Assert.Contains(notes, line => line.Kind == NoteKind.Missing && line.Text.StartsWith(missing.What, StringComparison.Ordinal)));
        Assert.All(Slate.Profile.Notices, notice => Assert.Contains(notes, line => line.Text == notice));
    }

    [Fact]
    public void Reasons_that_warn_are_cautions() => Assert.Contains(
        new NotesText(CultureInfo.InvariantCulture).Of(Slate), line => line.Kind == NoteKind.Caution && line.Text.StartsWith("Solvent is recorded", StringComparison.Ordinal));

    [Fact]
    public void A_gate_says_what_it_caps_and_at_which_end()
    {
        var verdict = new VerdictText(CultureInfo.InvariantCulture);
        Assert.Equal("Capped at 40: no spare", verdict.Gate(new("g", 40, "no spare", GateEnds.Both)));
        Assert.Equal("Capped at 40 at the low end: no spare", verdict.Gate(new("g", 40, "no spare", GateEnds.Low)));
    }

    [Fact]
    public void The_caution_about_local_rules_comes_last_whatever_the_hazards()
    {
        Assert.Contains("licensed practice come first", SafetyText.For([]).Single(), StringComparison.Ordinal);
        var cautions = SafetyText.For([Slate.Record]).ToArray();
        Assert.StartsWith("Lithium cells:", cautions[0], StringComparison.Ordinal);
        Assert.Contains("licensed practice come first", cautions[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Options_are_told_as_bands_in_words_with_their_unit()
    {
        var rules = new RuleText(German);
        var heat = Slate.Criteria.Single(node => node.Criterion!.Id == "adhesive-strength").Options!;
        Assert.Contains("tolerance: 0,15", rules.Options(heat));
        Assert.Contains("heatBands: 60 \u00B0C gives 60, 80 \u00B0C gives 45, 100 \u00B0C gives 25, 150 \u00B0C gives 0, straight lines between", rules.Options(heat));
    }
}
