namespace FixScore.Mutants;

/// <summary>A project whose mutants are tried, and the tests that are to notice them, those of its own first.</summary>
/// <param name="Project">Name of the project in <c>src</c>.</param>
/// <param name="Tests">Names of test projects.</param>
/// <param name="Touch">An expression that reaches a mutant: where none is reached, dotnet-stryker takes the measuring for broken and tries each.</param>
sealed record Room(string Project, string[] Tests, string Touch)
{
    public static Room? Named(string name) => name switch
    {
        "kernel" => new(
            "FixScore", ["FixScore.Tests", "FixScore.Scoring.Tests", "FixScore.Exact.Tests", "FixScore.Extensions.Tests", "FixScore.Cli.Tests"],
            """typeof(global::FixScore.Scorer).Assembly.GetType("FixScore.Reading.JsonPointers")!.GetMethod("Resolve")!.Invoke(null, [default(System.Text.Json.JsonElement), ""])"""),
        "disassembly" => new(
            "FixScore.Disassembly", ["FixScore.Disassembly.Tests", "FixScore.Criteria.Tests", "FixScore.Requirements.Tests"],
            """new global::FixScore.Disassembly.RouteQuery("x").Equals(null).ToString()"""),
        "pairing" => new("FixScore.Pairing", ["FixScore.Pairing.Tests"], """global::FixScore.Pairing.PartFunctions.Of("battery").AsEnumerable()"""),
        _ => null,
    };
}
