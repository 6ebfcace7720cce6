namespace FixScore.Tests.Checks;

/// <summary>Slips do not stand in the way of a record.</summary>
public sealed class WarningTests
{
    [Fact]
    public void Heat_that_something_follows_directly_is_no_slip() => Assert.Empty(Texts.TinyWith("""
        { "operations": [{ "id": "warm", "action": "heat" }, { "id": "lift", "action": "lift", "directlyAfter": "warm" }] }
        """).Problems);

    [Fact]
    public void Heat_that_nothing_follows_directly_may_be_one() => Assert.Equal(["heat-not-followed /operations/0"], Texts.TinyWith("""
        { "operations": [{ "id": "warm", "action": "heat" }, { "id": "lift", "action": "lift", "after": ["warm"] }] }
        """).OrThrow().Warnings.Select(warning => $"{warning.Problem.Code} {warning.Problem.At}"));

    [Fact]
    public void Several_units_of_another_model_code_make_one_warning_for_the_trial() => Assert.Equal(["swap-across-model-codes /swaps/0"], Texts.TinyWith("""
        {
          "assessment": { "assessor": "bench", "date": "2026-01-15", "units": [{ "id": "u1", "modelCode": "m1" }, { "id": "u2", "modelCode": "m2" }, { "id": "u3", "modelCode": "m2" }] },
          "parts": [{ "id": "cell", "role": "battery" }, { "id": "screen", "role": "display-assembly" }],
          "swaps": [{ "id": "t", "host": "u1", "installed": { "cell": "u2", "screen": "u3" }, "checks": [{ "function": "charging", "result": "works" }] }]
        }
        """).OrThrow().Warnings.Select(warning => $"{warning.Problem.Code} {warning.Problem.At}"));

    [Fact]
    public void A_thousand_warnings_and_more_do_not_stand_in_the_way()
    {
        var heats = Enumerable.Range(0, 1500).Select(i => $$"""{ "id": "h{{i}}", "action": "heat" }""");
        var result = Texts.TinyWith($$"""{ "operations": [{{string.Join(",", heats)}}] }""");
        Assert.Equal((true, 1001), (result.IsValid, result.Problems.Length));
    }

    [Fact]
    public void An_error_behind_a_thousand_warnings_does()
    {
        var heats = Enumerable.Range(0, 1500).Select(i => $$"""{ "id": "h{{i}}", "action": "heat" }""");
        var result = Texts.TinyWith($$"""{ "operations": [{{string.Join(",", heats)}}], "swaps": [{ "id": "t", "host": "nobody", "installed": { "cell": "nobody" }, "checks": [] }] }""");
        Assert.False(result.IsValid);
        Assert.Contains(result.Problems, problem => problem.Problem.Severity == Severity.Error);
    }
}
