namespace FixScore.Architecture.Tests;

/// <summary>Imports go one way: down to the contracts.</summary>
public sealed class Imports_tests
{
    const string Contracts = "FixScore.Abstractions";

    /// <summary>What each room may import of the others. A room that is not here may not exist.</summary>
    static readonly Dictionary<string, string[]> May = new(StringComparer.Ordinal)
    {
        [Contracts] = [],
        ["FixScore.Disassembly"] = [Contracts],
        ["FixScore.Pairing"] = [Contracts, "FixScore.Disassembly"],
        ["FixScore"] = [Contracts],
        ["FixScore.Extensions"] = [Contracts, "FixScore"],
        ["FixScore.Testing"] = [Contracts, "FixScore"],
        ["FixScore.Analysis"] = [Contracts, "FixScore"],
        ["FixScore.Reporting"] = [Contracts, "FixScore", "FixScore.Analysis", "FixScore.Disassembly", "FixScore.Pairing"],
        ["FixScore.Reporting.Images"] = [Contracts, "FixScore", "FixScore.Reporting"],
    };

    /// <summary>Plugins see contracts and shared facts: never the kernel, never each other.</summary>
    static readonly string[] PluginMay = [Contracts, "FixScore.Disassembly", "FixScore.Pairing"];

    public static TheoryData<string> Libraries => [.. House.Rooms.Where(room => room != "FixScore.Cli")];

    // The room for analysis judges scores and makes none: its distributions and correlations come from a library of statistics.
    public static TheoryData<string> Pure => [.. House.Rooms.Where(room => House.IsPlugin(room) || room is Contracts or "FixScore" or "FixScore.Disassembly" or "FixScore.Pairing")];

    [Theory]
    [MemberData(nameof(Libraries))]
    public void A_room_imports_only_what_lies_below_it(string room)
    {
        var may = House.IsPlugin(room) ? PluginMay : May[room];
        Assert.Empty(Imports(room).Where(name => name.StartsWith("FixScore", StringComparison.Ordinal)).Except(may));
    }

    [Theory]
    [MemberData(nameof(Pure))]
    public void A_room_of_the_score_path_takes_no_package(string room) =>
        Assert.DoesNotContain(Imports(room), name => !name.StartsWith("FixScore", StringComparison.Ordinal) && !name.StartsWith("System.", StringComparison.Ordinal));

    [Fact]
    public void Nobody_imports_the_command_line_tool() =>
        Assert.DoesNotContain(House.Rooms, room => Imports(room).Contains("FixScore.Cli"));

    [Fact]
    public void The_command_line_tool_imports_a_plugin_so_that_the_check_sees_imports() =>
        Assert.Contains(Imports("FixScore.Cli"), House.IsPlugin);

    static string[] Imports(string room) => [.. House.Load(room).GetReferencedAssemblies().Select(name => name.Name!)];
}
