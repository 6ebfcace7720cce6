using System.Globalization;
using FixScore.Reporting.Cards;

namespace FixScore.Reporting.Tests.Cards;

public sealed class CardContentTests
{
    static string[] Texts(Picture picture) => [.. picture.Marks.OfType<Words>().Select(words => words.Text)];

    static string[] Texts(Judgement judgement) => Texts(Card.Draw(judgement, CardShape.Wide, CultureInfo.InvariantCulture));

    static string[] Texts(params Interval[] totals) =>
        Texts(Card.Draw(Placing.Of(totals.Select((total, index) => Bench.Demo[index].With($"r{index}", total))), CardShape.Wide, CultureInfo.InvariantCulture));

    [Fact]
    public void The_verdict_names_the_interval_and_the_classes()
    {
        var told = string.Join(' ', Texts(Bench.Demo[1]));
        Assert.Contains("76.1 to 80.4 points, class \u201Crepairable with care\u201D to \u201Cmade to be repaired\u201D.", told, StringComparison.Ordinal);
        Assert.Contains("The low end of the total would rise by 7.4 if this were at its best: Documentation, 58.7 to 63.7 points.", told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_foot_names_profile_date_and_digest_and_cautions()
    {
        var told = string.Join(' ', Texts(Bench.Demo[1]));
        var digest = Bench.Demo[1].Score.ComputeDigest()["sha256:".Length..];
        Assert.Contains($"profile bench-balanced 1.0.0 \u00B7 assessed 2026-09-08 \u00B7 score {digest[..12]}", told, StringComparison.Ordinal);
        Assert.Contains("Screening aid. Weights and points", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_notices_there_is_no_caution() => Assert.DoesNotContain(
        Texts(Bench.Demo[1] with { Profile = Bench.Demo[1].Profile with { Notices = [] } }), text => text.Contains("Screening aid", StringComparison.Ordinal));

    [Fact]
    public void A_draft_says_that_it_is_no_result() => Assert.Contains(
        Texts(Bench.Demo[1] with { Profile = Bench.Demo[1].Profile with { Status = ProfileStatus.Draft, Notices = [] } }), text => text == "Draft rules: not to be published as a result.");

    [Fact]
    public void A_closed_gate_is_told_first() => Assert.Contains("Capped at 40: the battery is glued. The low end", string.Join(' ',
        Texts(Bench.Demo[1] with { Score = Bench.Demo[1].Score with { Gates = [new("glued", 40, "the battery is glued", GateEnds.Both)] } })), StringComparison.Ordinal);

    [Fact]
    public void A_bar_is_solid_to_the_low_end_and_hatched_to_the_high_end()
    {
        var marks = Card.Draw(Bench.Demo[0].With("r", new(25, 75)), CardShape.Wide, CultureInfo.InvariantCulture).Marks;
        var track = marks.OfType<Block>().First(block => block is { Tone: Tone.Track }).Box;
        Assert.Contains(new Block(track with { Width = track.Width / 4 }, Tone.Bar), marks);
        Assert.Contains(new Hatching(track with { X = track.X + track.Width / 4, Width = track.Width / 2 }), marks);
    }

    [Fact]
    public void An_exact_total_has_no_hatching() => Assert.DoesNotContain(
        Card.Draw(Placing.Of([Bench.Demo[0].With("r", 50)]), CardShape.Wide, CultureInfo.InvariantCulture).Marks, mark => mark is Hatching);

    [Fact]
    public void A_winner_is_named_and_places_that_overlap_are_ranges()
    {
        var texts = Texts(new(80, 90), new(10, 30), new(20, 40));
        Assert.Contains($"{Bench.Demo[0].Device} comes first of 3", texts);
        Assert.Equal(2, texts.Count(text => text == "2 to 3"));
        Assert.Contains(texts, text => text.EndsWith("A range of places is not settled: the totals overlap.", StringComparison.Ordinal));
    }

    [Fact]
    public void An_open_first_place_is_no_winner() => Assert.Contains("First place is open between two devices", Texts(new(50, 60), new(55, 70), new(1, 2)));

    [Fact]
    public void Equal_exact_totals_share_the_first_place() => Assert.Contains("Two devices share the first place", Texts(50, 50, 40));

    [Fact]
    public void Places_that_have_no_room_are_counted() => Assert.Contains("and 35 more below", Texts(Card.Draw(Deck.Many(40), CardShape.Square, CultureInfo.InvariantCulture)));
}
