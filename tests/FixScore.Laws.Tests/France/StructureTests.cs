using System.Globalization;

namespace FixScore.Laws.Tests.France;

/// <summary>Code de l'environnement (France), article R541-214: five notes out of 20, a tenth of their sum.</summary>
public sealed class StructureTests
{
    [Theory] // Article R541-214: the notes add up to 100; coefficients from memory
    [InlineData("1", "10")]
    [InlineData("0.5", "5")]
    [InlineData("0", "0")]
    public void Equal_sub_notes_give_the_same_index(string share, string index) =>
        Assert.Equal((Interval)Number(index), Whole().Score(Rules.FranceAnswering(_ => Number(share))).Total);

    [Fact] // Article R541-214: one note of the five is for prices; 80 of 100 are left
    public void Only_the_price_at_nothing_gives_8() => Assert.Equal(
        (Interval)8, Whole().Score(Rules.FranceAnswering(id => id == "spare-price-ratio" ? 0 : 1)).Total);

    [Theory] // Article R541-214: each note is out of 20
    [InlineData("note-1")]
    [InlineData("note-2")]
    [InlineData("note-3")]
    [InlineData("note-4")]
    [InlineData("note-5")]
    public void Each_note_is_out_of_20(string note) =>
        Assert.Equal((Interval)20, Whole().Score(Rules.FranceAnswering(_ => 1)).At(note).Value);

    [Theory] // limits of the display of the index; one decimal, half up: from memory
    [InlineData("0.194", "0 to 1.9")]
    [InlineData("0.195", "2 to 3.9")]
    [InlineData("0.394", "2 to 3.9")]
    [InlineData("0.395", "4 to 5.9")]
    [InlineData("0.595", "6 to 7.9")]
    [InlineData("0.794", "6 to 7.9")]
    [InlineData("0.795", "8 to 10")]
    public void Ranges_begin_at_the_index_as_shown(string share, string label) =>
        Assert.Equal(new(label, label), Whole().Score(Rules.FranceAnswering(_ => Number(share))).Class!);

    [Fact] // no source: what nothing judges stays open; 15 of 100 are for updates' information and remote assistance
    public void What_no_criterion_judges_keeps_the_index_open()
    {
        var score = Whole().Documents(Audience.Public).Years(7).Score(Rules.France);
        Assert.Equal((new Interval(0, 10), new Interval(0, 10)), (score.At("note-5/n5.1").Value, score.At("note-5/n5.2").Value));
        Assert.True(score.Total.High - score.Total.Low >= 1.5m);
    }

    [Fact] // notification 2020/0472/F, summary: the most expensive spare part; bands from memory: a tenth 10, three tenths 0
    public void The_dearest_spare_decides_the_price()
    {
        var device = Whole().Device(each => each with { Price = new(100, "EUR", true) });
        foreach (var (role, price) in new[] { ("battery", 5m), ("display-assembly", 20m), ("front-camera", 5m), ("rear-camera", 5m) })
            device.Spare(role, Audience.Public, spare => spare with { Price = new(price, "EUR", true) });
        Assert.Equal((Interval)5, device.Score(Rules.France).At("note-4/n4.1").Value);
    }

    [Fact] // own rule: parameters from memory must not pass for the index
    public void It_is_a_draft_that_says_so() =>
        Assert.Equal((ProfileStatus.Draft, true), (Rules.France.Status, Rules.France.Notices[0].Contains("must not be published", StringComparison.Ordinal)));

    static RecordBuilder Whole() => Devices.Whole().Held("mainboard", 0, id: "second-board");

    static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}
