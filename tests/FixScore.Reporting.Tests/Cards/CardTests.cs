using System.Globalization;
using System.Xml.Linq;
using FixScore.Reporting.Cards;

namespace FixScore.Reporting.Tests.Cards;

public sealed class CardTests
{
    [Fact]
    public void A_card_has_the_size_of_its_shape() => Assert.All(Deck.Tame, picture =>
    {
        var svg = Deck.Parsed(picture);
        Assert.Contains((picture.Width, picture.Height), ((int, int)[])[(1920, 1080), (1080, 1080)]);
        Assert.Equal($"0 0 {picture.Width} {picture.Height}", svg.Attribute("viewBox")!.Value);
        Assert.Equal($"{picture.Width}", svg.Attribute("width")!.Value);
    });

    [Fact]
    public void It_needs_nothing_from_anywhere() => Assert.All(Deck.Tame.Concat(Deck.Hostile), picture =>
    {
        var svg = Deck.Parsed(picture);
        Assert.All(svg.Descendants(), element => Assert.Contains(element.Name.LocalName, (string[])["title", "desc", "defs", "pattern", "rect", "text"]));
        Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName is "href" or "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
    });

    [Fact]
    public void Letters_that_would_reorder_or_break_the_picture_are_gone() => Assert.All(Deck.Hostile, picture =>
        Assert.DoesNotContain(picture.ToSvg(), letter => letter is '\u0000' or '\u001b' or '\u202E' or '\u2067' or '\uFFFE' or '\u2028' || char.IsControl(letter) && letter != '\n'));

    [Fact]
    public void Hostile_names_stay_text() => Assert.Contains(Deck.Parsed(Card.Draw(Deck.Named(Bench.Demo[1], Deck.Markup), CardShape.Wide, CultureInfo.InvariantCulture)).Elements(),
        element => element.Name.LocalName == "title" && element.Value.Contains("<script>alert(1)</script>", StringComparison.Ordinal));

    [Fact]
    public void What_is_drawn_lies_within_the_picture() => Assert.All(Deck.Tame.Concat(Deck.Hostile), picture => Assert.All(picture.Marks, mark =>
    {
        Assert.True(mark.Box is { X: >= 0, Y: >= 0, Width: > 0, Height: > 0 }, mark.ToString());
        Assert.True(mark.Box.Right <= picture.Width && mark.Box.Bottom <= picture.Height, mark.ToString());
    }));

    [Fact]
    public void Texts_keep_off_the_edge() => Assert.All(Deck.Tame.Concat(Deck.Hostile), picture => Assert.All(picture.Marks.OfType<Words>(), words =>
        Assert.True(words.Box.X >= 72 && words.Box.Right <= picture.Width - 72 && words.Baseline <= picture.Height - 40, words.ToString())));

    [Fact]
    public void Texts_do_not_cover_each_other() => Assert.All(Deck.Tame.Concat(Deck.Hostile), picture =>
    {
        var texts = picture.Marks.OfType<Words>().ToArray();
        Assert.All(texts, one => Assert.DoesNotContain(texts, other => !ReferenceEquals(one, other) && Meet(one, other)));
    });

    [Fact]
    public void Texts_are_large_enough_for_a_phone() => Assert.All(Deck.Tame, picture => Assert.All(picture.Marks.OfType<Words>(), words => Assert.True(words.Size >= 22, words.ToString())));

    [Fact]
    public void The_same_scores_give_the_same_bytes_under_any_culture_of_the_thread()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var svg = Tame();
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("ar-SA");
            Assert.Equal(svg, Tame());
            Assert.All(Enumerable.Range(0, 3).AsParallel().Select(_ => Tame()).ToArray(), again => Assert.Equal(svg, again));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
        static string Tame() => string.Concat(Deck.Tame.Select(picture => picture.ToSvg()));
    }

    [Fact]
    public void Numbers_follow_the_culture_asked_for()
    {
        var texts = Card.Draw(Bench.Demo[1], CardShape.Wide, CultureInfo.GetCultureInfo("de-DE")).Marks.OfType<Words>().Select(words => words.Text).ToArray();
        Assert.Contains(texts, text => text.StartsWith("76,1 to 80,4 points", StringComparison.Ordinal));
        Assert.Contains("21,2 to 21,6", texts);
    }

    [Fact]
    public void No_name_is_cut_in_the_title()
    {
        var name = new string('x', 10_000);
        Assert.Contains(name, Deck.Parsed(Card.Draw(Deck.Named(Bench.Demo[1], name), CardShape.Square, CultureInfo.InvariantCulture)).Elements().First().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_show_is_refused() => Assert.Throws<ArgumentException>(() => Card.Svg([], CardShape.Wide, CultureInfo.InvariantCulture));

    // Letters may hang a fifth of their size below the line and stand four fifths above it: common practice, no source.
    static bool Meet(Words one, Words other) => one.Box.X < other.Box.Right && other.Box.X < one.Box.Right
        && one.Baseline - one.Size * 4 / 5 < other.Baseline + other.Size / 5 && other.Baseline - other.Size * 4 / 5 < one.Baseline + one.Size / 5;
}
