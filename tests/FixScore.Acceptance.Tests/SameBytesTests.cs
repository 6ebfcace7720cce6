using System.Security.Cryptography;

namespace FixScore.Acceptance.Tests;

public sealed class SameBytesTests
{
    static readonly (string Name, string Value)[] Home = [("LANG", "C.UTF-8"), ("LC_ALL", "C.UTF-8"), ("TZ", "UTC")];

    [Theory]
    [InlineData("tr_TR.UTF-8", "Asia/Tokyo")]
    [InlineData("ar_SA.UTF-8", "America/St_Johns")]
    [InlineData("de_DE.UTF-8", "Pacific/Auckland")]
    public void The_demo_leaves_the_same_bytes_in_any_culture_and_time_zone(string language, string zone)
    {
        using var here = new TemporaryFolder();
        using var there = new TemporaryFolder();
        Assert.Equal(0, Fixscore.Run(null, Home, "demo", "--out", here.Path).Code);
        Assert.Equal(0, Fixscore.Run(null, [("LANG", language), ("LC_ALL", language), ("TZ", zone)], "demo", "--out", there.Path).Code);
        Assert.True(Directory.GetFiles(here.Path).Length > 8);
        Assert.Equal(Digests(here.Path), Digests(there.Path));
    }

    [Fact]
    public void A_culture_changes_text_for_people_and_nothing_else()
    {
        using var folder = new TemporaryFolder();
        var german = Fixscore.Run("score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balanced", "--culture", "de-DE", "--out", folder.File("a.json"));
        var plain = Fixscore.Run("score", Fixscore.Record("larkfield-slate-2"), "--profile", "bench-balanced", "--out", folder.File("b.json"));
        Assert.Equal((0, 0), (german.Code, plain.Code));
        Assert.NotEqual(german.Out, plain.Out);
        Assert.Equal(File.ReadAllBytes(folder.File("a.json")), File.ReadAllBytes(folder.File("b.json")));
    }

    static IEnumerable<string> Digests(string folder) => Directory.GetFiles(folder).Order(StringComparer.Ordinal)
        .Select(file => $"{Path.GetFileName(file)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))}");
}
