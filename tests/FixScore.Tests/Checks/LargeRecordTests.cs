namespace FixScore.Tests.Checks;

/// <summary>Checks take time in proportion to the record, whatever it holds. Each of these took minutes where a check compared all with all.</summary>
public sealed class LargeRecordTests
{
    const int Many = 30_000;
    const int Limit = 20_000;

    // Every step of the second half goes back to the start, over a long way in which nothing is told yet.
    [Fact(Timeout = Limit)]
    public Task Many_ways_back_to_one_circle_are_one_circle() => InTime(() => Assert.Equal(
        ["waits-for-itself /operations/0"],
        TinyWith("operations", 2 * Many, i => $$"""{ "id": "o{{i}}", "action": "lift", "after": [{{After(i)}}] }""").Told()));

    [Fact(Timeout = Limit)]
    public Task Conditions_on_a_long_chain_of_carriers_are_followed_once() => InTime(() => Assert.Equal(
        (Many, 0), CountOf(Texts.TinyWith($$"""
        {
          "parts": [{{List(Many, i => $$"""{ "id": "p{{i}}", "role": "bracket", "on": "p{{i + 1}}" }""")}}, { "id": "p{{Many}}", "role": "frame" }],
          "operations": [{{List(Many, i => $$"""{ "id": "o{{i}}", "action": "lift", "after": [{ "removed": "p{{i}}" }] }""")}}]
        }
        """))));

    [Fact(Timeout = Limit)]
    public Task Many_absent_roles_among_many_parts_are_looked_up() => InTime(() => Assert.Equal(
        ["role-absent-and-present /absent/7"], Texts.TinyWith($$"""
        {
          "absent": [{{List(Many, i => i == 7 ? "\"r7\"" : $"\"a{i}\"")}}],
          "parts": [{{List(Many, i => $$"""{ "id": "p{{i}}", "role": "r{{i}}" }""")}}]
        }
        """).Told()));

    [Fact(Timeout = Limit)]
    public Task A_trial_of_a_large_group_is_checked_once() => InTime(() => Assert.Equal(
        ["swap-splits-group /swaps/0/installed/p9"], Texts.TinyWith($$"""
        {
          "assessment": { "assessor": "bench", "date": "2026-01-15", "units": [{ "id": "u1" }, { "id": "u2" }, { "id": "u3" }] },
          "parts": [{{List(Many, i => $$"""{ "id": "p{{i}}", "role": "bracket" }""")}}],
          "joints": [{ "id": "j", "kind": "weld", "integral": true, "joins": [{{List(Many, i => $"\"p{i}\"")}}] }],
          "swaps": [{ "id": "t", "host": "u1", "checks": [{ "function": "charging", "result": "works" }], "installed": { {{List(Many, i => $"\"p{i}\": \"u{(i == 9 ? 3 : 2)}\"")}} } }]
        }
        """).Told()));

    static string After(int i) => i switch { 0 => "\"o1\"", 1 => "\"o0\", \"o2\"", 2 * Many - 1 => "\"o0\"", < Many => $"\"o{i + 1}\"", _ => $"\"o{i + 1}\", \"o0\"" };

    static ReadResult<RecordDocument> TinyWith(string list, int count, Func<int, string> entry) => Texts.TinyWith($$"""{ "{{list}}": [{{List(count, entry)}}] }""");

    static string List(int count, Func<int, string> entry) => string.Join(",", Enumerable.Range(0, count).Select(entry));

    static (int Operations, int Problems) CountOf(ReadResult<RecordDocument> result) => (result.OrThrow().Record.Operations.Count, result.Problems.Length);

    static Task InTime(Action check) => Task.Run(check);
}
