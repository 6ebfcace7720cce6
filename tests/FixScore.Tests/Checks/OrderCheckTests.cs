namespace FixScore.Tests.Checks;

/// <summary>An operation that certainly needs itself first is an error; one that may be done another way is not.</summary>
public sealed class OrderCheckTests
{
    const string Error = "waits-for-itself /operations/0";

    // The frame carries the cell, and the cell the cover; board and shield are never parted.
    const string Parts = """
        "parts": [
          { "id": "frame", "role": "frame" }, { "id": "cell", "role": "battery", "on": "frame" }, { "id": "cover", "role": "shield", "on": "cell" },
          { "id": "board", "role": "mainboard" }, { "id": "can", "role": "shield" }
        ],
        "joints": [
          { "id": "weld", "kind": "weld", "joins": ["board", "can"], "integral": true },
          { "id": "glue", "kind": "adhesive", "joins": ["cell", "frame"] }, { "id": "touch", "kind": "contact", "joins": ["cell", "board"] }
        ]
        """;

    [Theory]
    [InlineData("""{ "after": [{ "removed": "cell" }] }""", """{ "removes": ["cell"], "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "removed": "cover" }] }""", """{ "removes": ["frame"], "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "removed": "can" }] }""", """{ "removes": ["board"], "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "removed": "frame" }] }""", """{ "removes": ["cell"], "after": ["a"] }""", "")]
    [InlineData("""{ "after": [{ "removed": "cell" }] }""", """{ "moves": ["cell"], "after": ["a"] }""", "")]
    [InlineData("""{ "after": [{ "away": "cell" }] }""", """{ "moves": ["cell"], "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "away": "cell" }] }""", """{ "removes": ["frame"], "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "undone": "glue" }] }""", """{ "undoes": ["glue"], "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "undone": "touch" }] }""", """{ "undoes": ["touch"], "after": ["a"] }""", "")]
    [InlineData("""{ "directlyAfter": "b" }""", """{ "directlyAfter": "a" }""", Error)]
    [InlineData("""{ "after": [{ "anyOf": ["b"] }] }""", """{ "after": ["a"] }""", Error)]
    [InlineData("""{ "after": [{ "anyOf": ["b", { "removed": "cell" }] }] }""", """{ "after": ["a"] }""", "")]
    [InlineData("""{ "after": [{ "allOf": [{ "undone": "glue" }, "b"] }] }""", """{ "after": ["a"] }""", Error)]
    public void What_surely_needs_itself_can_never_begin(string a, string b, string told) => Assert.Equal(told, Told(a, b));

    [Theory]
    [InlineData("""{ "after": [{ "removed": "cell" }] }""", """{ "removes": ["cell"], "after": ["a"] }""", """{ "removes": ["frame"] }""")]
    [InlineData("""{ "after": [{ "away": "cell" }] }""", """{ "removes": ["cell"], "after": ["a"] }""", """{ "moves": ["cell"] }""")]
    [InlineData("""{ "after": [{ "undone": "glue" }] }""", """{ "undoes": ["glue"], "after": ["a"] }""", """{ "undoes": ["glue"] }""")]
    public void A_second_operation_that_would_do_breaks_the_circle(string a, string b, string c) => Assert.Equal("", Told(a, b, c));

    [Fact]
    public void Putting_together_takes_nothing_away() => Assert.Equal(Error, Told(
        """{ "after": [{ "removed": "cell" }] }""", """{ "removes": ["cell"], "after": ["a"] }""", """{ "removes": ["cell"], "phase": "reassembly" }"""));

    [Fact]
    public void A_milestone_can_close_the_circle() => Assert.Equal(Error, Told("""{ "after": ["m"] }"""));

    static string Told(params string[] operations)
    {
        var all = operations.Select((each, index) => Texts.Merged($$"""{ "id": "{{"abc"[index]}}", "action": "lift" }""", each));
        return string.Join(", ", Texts.TinyWith($$"""{ {{Parts}}, "milestones": [{ "id": "m", "when": ["a"] }], "operations": [{{string.Join(",", all)}}] }""").Told());
    }
}
