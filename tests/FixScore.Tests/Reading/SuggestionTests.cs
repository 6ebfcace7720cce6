using FixScore.Reading;

namespace FixScore.Tests.Reading;

public sealed class SuggestionTests
{
    static readonly string[] Known = ["joints", "joins", "screw", "after", "directlyAfter", "serialised"];

    [Theory]
    [InlineData("scew", "screw")]
    [InlineData("aftre", "after")]
    [InlineData("joint", "joints")]
    [InlineData("join", "joins")]
    [InlineData("After", "after")]
    [InlineData("directly_after", "directlyAfter")]
    [InlineData("serialized", "serialised")]
    [InlineData("xjoins", "joins")]
    [InlineData("joinsx", "joins")]
    [InlineData("jjoins", "joins")]
    [InlineData("joins", "joins")]
    [InlineData("directlAftre", "directlyAfter")]
    public void A_slip_of_the_keyboard_finds_the_word_meant(string wrong, string meant) => Assert.Equal(meant, Suggestion.For(wrong, Known));

    [Theory]
    [InlineData("zzzzzz")]
    [InlineData("")]
    [InlineData("of")]
    [InlineData("direclAftre")]
    public void A_far_word_finds_none(string wrong) => Assert.Null(Suggestion.For(wrong, Known));

    [Fact]
    public void Of_equally_near_words_the_first_is_named() => Assert.Equal("bat", Suggestion.For("dat", ["bat", "cat"]));

    [Fact]
    public void Without_a_near_word_the_hint_lists_what_is_known() => Assert.Equal("Known here: one, two.", Suggestion.Hint("zzzzzz", ["one", "two"]));

    [Theory]
    [InlineData("""{ "joint": [] }""", "Did you mean 'joints'?")]
    [InlineData("""{ "opertaions": [] }""", "Did you mean 'operations'?")]
    public void Hints_name_the_member_meant(string members, string hint) => Assert.Equal(hint, Texts.TinyWith(members).Problems[0].Problem.Hint);

    [Fact]
    public void Hints_name_the_id_meant() => Assert.Equal(
        "Did you mean 'cover'?", Texts.Record(Texts.Bench.Replace("\"under\": [\"cover\"]", "\"under\": [\"cove\"]", StringComparison.Ordinal)).Problems[0].Problem.Hint);
}
