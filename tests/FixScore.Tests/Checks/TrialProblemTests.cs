namespace FixScore.Tests.Checks;

/// <summary>What is wrong with a trial is told with code, place and hint.</summary>
public sealed class TrialProblemTests
{
    const string Checks = """ "checks": [{ "function": "charging", "result": "works" }] """;

    // The trial stands on one line, so that columns can be counted: it begins at column 1 of line 15.
    [Theory]
    [InlineData("""{ "id": "t", "host": "a", "installed": { "cell": "nobody" },""" + Checks + "}",
        "id-unknown", "/swaps/0/installed/cell", "\"nobody\"", "There is no unit 'nobody' in this record.", "Add the entry, or correct the id.")]
    [InlineData("""{ "id": "t", "host": "loose-cel", "installed": {},""" + Checks + "}",
        "id-unknown", "/swaps/0/host", "\"loose-cel\"", "There is no unit 'loose-cel' in this record.", "Did you mean 'loose-cell'?")]
    [InlineData("""{ "id": "t", "host": "loose-cell", "installed": {},""" + Checks + "}",
        "swap-host-is-spare", "/swaps/0/host", "\"loose-cell\"", "The host 'loose-cell' is a loose spare.", "The host is the device that parts are put into.")]
    [InlineData("""{ "id": "t", "host": "a", "installed": { "cell": "a" },""" + Checks + "}",
        "swap-from-host", "/swaps/0/installed/cell", "\"a\" }", "'cell' is put into the unit it comes from.", "Leave out what stays in the host.")]
    [InlineData("""{ "id": "t", "host": "a", "installed": { "cell": "b" }, "checks": [] }""",
        "trial-without-checks", "/swaps/0/checks", "[]", "The trial checks nothing and proves nothing.", "List what was checked.")]
    [InlineData("""{ "id": "t", "host": "a", "installed": { "cell": "b" }, "checks": [{ "function": "charging", "result": "untested" }] }""",
        "trial-untested", "/swaps/0/checks", "[{", "Every check of 't' is untested, so it proves nothing.", "Say how a function behaved, or leave the trial out.")]
    public void It_is_told_with_code_pointer_line_column_and_hint(string trial, string code, string pointer, string at, string message, string hint)
    {
        var told = Assert.Single(Texts.Record(WithSwap(trial)).Problems);
        Assert.Equal((code, pointer, message, hint), (told.Problem.Code, told.Problem.At.Text, told.Problem.Message, told.Problem.Hint));
        Assert.Equal((15, trial.LastIndexOf(at, StringComparison.Ordinal) + 1), (told.Line, told.Column));
    }

    [Theory]
    [InlineData("""{ "function": "charging" }""")]
    [InlineData("""{ "function": "charging", "result": null }""")]
    [InlineData("""{ "function": "charging", "result": [] }""")]
    public void A_check_without_a_result_is_an_error(string check)
    {
        var result = Texts.Record(WithSwap($$"""{ "id": "t", "host": "a", "installed": { "cell": "b" }, "checks": [{{check}}] }"""));
        Assert.False(result.IsValid);
        var told = Assert.Single(result.Problems);
        Assert.StartsWith("/swaps/0/checks/0", told.Problem.At.Text, StringComparison.Ordinal);
        Assert.Equal(15, told.Line);
        Assert.NotEmpty(told.Problem.Hint);
    }

    [Theory]
    [InlineData("untested", "works")]
    [InlineData("untested", "warning")]
    public void One_check_that_was_tested_is_enough(string first, string second) => Assert.Empty(Texts.Record(WithSwap($$"""
        { "id": "t", "host": "a", "installed": { "cell": "b" }, "checks": [{ "function": "charging", "result": "{{first}}" }, { "function": "gauge", "result": "{{second}}" }] }
        """)).Problems);

    static string WithSwap(string trial) => $$"""
        {
          "format": "fixscore-record/1",
          "id": "trialled",
          "device": { "maker": "Example", "model": "One", "kind": "smartphone" },
          "assessment": {
            "assessor": "bench",
            "date": "2026-01-15",
            "units": [{ "id": "a" }, { "id": "b" }, { "id": "loose-cell", "source": "used-spare" }]
          },
          "parts": [
            { "id": "board", "role": "mainboard" },
            { "id": "cell", "role": "battery" }
          ],
          "swaps": [
        {{trial}}
          ]
        }
        """;
}
