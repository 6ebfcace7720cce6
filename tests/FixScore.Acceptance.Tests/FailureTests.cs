using System.Text.Json;

namespace FixScore.Acceptance.Tests;

public sealed class FailureTests
{
    static void Refused(int code, string says, params string[] arguments)
    {
        var ran = Fixscore.Run(arguments);
        Assert.Equal(code, ran.Code);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_on_the_command_line_exits_with_2() => Refused(2, "--profile", "score", Fixscore.Record("larkfield-slate-2"), "--profil", "bench-balanced");

    [Fact]
    public void A_file_that_is_not_there_exits_with_3() => Refused(3, "nowhere.json", "validate", "nowhere.json");

    [Fact]
    public void A_profile_nobody_has_exits_with_3_and_suggests() =>
        Refused(3, "bench-balanced", "score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balancd");

    [Fact]
    public void A_plugin_file_that_is_none_exits_with_4() => Refused(4, "larkfield-slate-2.json", "criteria", "--plugin", Fixscore.Record("larkfield-slate-2"));

    [Fact]
    public void Output_that_cannot_be_written_exits_with_5_and_leaves_nothing()
    {
        using var folder = new TemporaryFolder();
        Refused(5, "missing", "score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balanced", "--out", folder.File("missing/s.json"));
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }

    [Fact]
    public void All_problems_of_a_record_come_at_once_with_line_column_and_carets()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("r.json"), """
            {
              "format": "fixscore-record/1", "id": "r",
              "device": { "maker": "m", "model": "n", "kind": "laptop" },
              "assessment": { "assessor": "a", "date": "2026-02-30", "units": [] },
              "parts": [ { "id": "p", "role": "battery" } ],
              "joint": [],
              "joints": [ { "id": "j", "joins": ["p", "q"], "kind": "scrw", "count": -1 } ]
            }
            """);
        var ran = Fixscore.Run("validate", folder.File("r.json"));
        Assert.Equal(3, ran.Code);
        foreach (var place in (string[])["r.json:4:", "r.json:6:", "r.json:7:"]) Assert.Contains(place, ran.Error, StringComparison.Ordinal);
        foreach (var says in (string[])["Did you mean 'joints'?", "Did you mean 'screw'?", "(/joints/0/joins/1)", "^^^"]) Assert.Contains(says, ran.Error, StringComparison.Ordinal);
        var json = Fixscore.Run("validate", folder.File("r.json"), "--json");
        Assert.Equal(5, JsonDocument.Parse(json.Out).RootElement.GetProperty("problems").GetArrayLength());
    }

    [Fact]
    public void A_file_of_100_megabytes_is_refused_without_being_parsed()
    {
        using var folder = new TemporaryFolder();
        using (var file = File.Create(folder.File("big.json"))) file.SetLength(100 << 20);
        Refused(3, "64 MiB", "validate", folder.File("big.json"));
    }

    [Fact]
    public void No_file_of_the_corpus_of_bad_input_crashes_the_program()
    {
        var files = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Corpus"), "*.json", SearchOption.AllDirectories)
            .Where(file => !file.EndsWith("manifest.json", StringComparison.Ordinal)).Order(StringComparer.Ordinal).ToArray();
        Assert.True(files.Length > 400);
        var ran = Fixscore.Run(["validate", .. files]);
        Assert.Equal(3, ran.Code);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        var unwrapped = ran.Out.Replace("\n", "", StringComparison.Ordinal);
        Assert.All(files, file => Assert.Contains(Path.GetFileName(file), unwrapped, StringComparison.Ordinal));
    }
}
