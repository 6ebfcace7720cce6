namespace FixScore.Tests.Reading;

/// <summary>Long chains take time in proportion to their length, and no stack.</summary>
public sealed class LongChainTests
{
    const int Length = 100_000;

    [Fact]
    public void A_chain_of_100000_operations_is_read() =>
        Assert.Equal(Length, Texts.TinyWith(Operations(i => i == 0 ? "[]" : $"[\"o{i - 1}\"]")).OrThrow().Record.Operations.Count);

    [Fact]
    public void A_chain_of_100000_operations_that_closes_is_told_once() => Assert.Equal(
        ["waits-for-itself /operations/0"],
        Texts.TinyWith(Operations(i => $"[\"o{(i + 1) % Length}\"]")).Told());

    [Fact]
    public void A_long_way_into_a_circle_is_no_second_circle() => Assert.Equal(
        [$"waits-for-itself /operations/{Length - 1}"],
        Texts.TinyWith(Operations(i => $"[\"o{Math.Min(i + 1, Length - 1)}\"]")).Told());

    [Fact]
    public void A_chain_of_100000_carriers_is_read()
    {
        var parts = Enumerable.Range(0, Length).Select(i => $$"""{ "id": "p{{i}}", "role": "bracket", "on": "p{{i + 1}}" }""");
        Assert.Equal(Length + 1, Texts.TinyWith($$"""{ "parts": [{{string.Join(",", parts)}}, { "id": "p{{Length}}", "role": "frame" }] }""").OrThrow().Record.Parts.Count);
    }

    [Fact]
    public void Ten_thousand_unknown_ids_among_as_many_known_ones_are_told_in_time() => Assert.Equal(
        1001, Texts.TinyWith(Operations(i => $"[\"x{i}\"]", 10_000)).Problems.Length);

    static string Operations(Func<int, string> after, int count = Length)
    {
        var operations = Enumerable.Range(0, count).Select(i => $$"""{ "id": "o{{i}}", "action": "lift", "after": {{after(i)}} }""");
        return $$"""{ "operations": [{{string.Join(",", operations)}}] }""";
    }
}
