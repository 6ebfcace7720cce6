namespace FixScore.Tests.Checks;

/// <summary>Trials that could not have happened.</summary>
public sealed class TrialCheckTests
{
    const string Parts = """
        "parts": [{ "id": "board-a", "role": "mainboard" }, { "id": "shield", "role": "shield" }, { "id": "board-b", "role": "mainboard" }, { "id": "cell", "role": "battery" }],
        "joints": [{ "id": "j", "joins": ["board-a", "shield"], "kind": "solder", "integral": true }],
        "assessment": { "assessor": "bench", "date": "2026-01-15", "units": [{ "id": "u1" }, { "id": "u2" }, { "id": "u3", "source": "maker-spare" }] }
        """;

    [Theory]
    [InlineData("""{ "board-a": "u2", "board-b": "u2" }""", "")]
    [InlineData("""{ "board-a": "u2", "cell": "u3" }""", "")]
    [InlineData("""{ "board-a": "u2", "board-b": "u3" }""", "swap-two-boards /swaps/0/installed/board-b")]
    [InlineData("""{ "shield": "u2", "board-b": "u3" }""", "swap-two-boards /swaps/0/installed/board-b")]
    [InlineData("""{ "board-a": "u2", "shield": "u3" }""", "swap-splits-group /swaps/0/installed/shield")]
    [InlineData("""{ "cell": "u1" }""", "swap-from-host /swaps/0/installed/cell")]
    public void Parts_come_from_other_units_and_boards_from_one(string installed, string told) => Assert.Equal(
        told, string.Join(", ", Texts.TinyWith($$"""{ {{Parts}}, "swaps": [{ "id": "t", "host": "u1", "installed": {{installed}}, "checks": [{ "function": "charging", "result": "works" }] }] }""").Told()));

    [Theory]
    [InlineData("\"maker-spare\"", false)]
    [InlineData("[\"maker-spare\", \"used-spare\"]", false)]
    [InlineData("[\"maker-spare\", \"device\"]", true)]
    public void A_host_that_cannot_be_a_device_is_none(string source, bool isValid) => Assert.Equal(isValid, Texts.TinyWith($$"""
        { "assessment": { "assessor": "bench", "date": "2026-01-15", "units": [{ "id": "u1", "source": {{source}} }] },
          "swaps": [{ "id": "t", "host": "u1", "installed": {}, "checks": [{ "function": "charging", "result": "works" }] }] }
        """).IsValid);
}
