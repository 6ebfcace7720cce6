using System.Security.Cryptography;
using System.Text;
using FixScore.Cli.Tests.Support;
using FixScore.Tests.Samples;

namespace FixScore.Cli.Tests;

/// <summary>Plugin files at the command line: pinned or refused, timed, measured. SHA-256 as FIPS 180-4 defines it, over the whole file.</summary>
public sealed class PluginTests : IDisposable
{
    readonly TemporaryFolder folder = new();

    [Fact]
    public void A_file_that_is_not_pinned_is_refused_with_4_and_its_pin()
    {
        var ran = Fixscore.Run("criteria", "--plugin", SamplePlugins.Unruly);

        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.StartsWith($"{SamplePlugins.Unruly} plugin-unpinned It is not pinned: nobody has said which file of that name is trusted.\n  It runs with your rights.", ran.Error, StringComparison.Ordinal);
        Assert.Contains($"\n  {Entry(SamplePlugins.Unruly)}\n", ran.Error, StringComparison.Ordinal);
        Assert.Contains("--trust-once", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_list_pins_is_loaded_with_and_without_being_named()
    {
        var pins = Pins(Entry(SamplePlugins.Unruly));
        Assert.Contains("acme.does-nothing", Fixscore.Run("criteria", "--pins", pins).Out, StringComparison.Ordinal);
        Assert.Equal(0, Fixscore.Run("criteria", "--pins", pins, "--plugin", SamplePlugins.Unruly).Code);
    }

    [Fact]
    public void A_file_that_changed_is_refused_unless_it_is_trusted_once()
    {
        var file = SamplePlugins.Copy(SamplePlugins.Unruly, folder.File("acme"));
        var pins = Pins(Entry(file));
        File.AppendAllBytes(file, [0]);

        var ran = Fixscore.Run("criteria", "--pins", pins);
        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.Contains(" plugin-changed ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, Fixscore.Run("criteria", "--pins", pins, "--trust-once").Code);
    }

    [Fact]
    public void All_files_that_cannot_be_used_are_told_at_once_in_plain_words()
    {
        var ran = Fixscore.Run("criteria", "--trust-once", "--plugin", folder.File("none.dll"), "--plugin", SamplePlugins.Broken, "--plugin", folder.Write("text.dll", "no assembly"u8));

        Assert.Equal(4, ran.Code);
        Assert.Equal(["plugin-file-missing", "plugin-threw", "plugin-not-an-assembly"], ran.Error.Split('\n').Where(line => line.Length > 0 && line[0] == '/').Select(line => line.Split(' ')[1]));
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[]", "wrong-type")]
    [InlineData("""{ "plugins": [{ "file": "a.dll" }] }""", "missing-member")]
    [InlineData("""{ "plugins": [{ "file": "a.dll", "sha256": "12" }] }""", "wrong-text")]
    [InlineData("""{ "plugin": [] }""", "unknown-member")]
    public void A_list_that_cannot_be_used_exits_with_3(string text, string code)
    {
        var ran = Fixscore.Run("criteria", "--pins", folder.Write("pins.json", Encoding.UTF8.GetBytes(text)));
        Assert.Equal(3, ran.Code);
        Assert.Contains($" {code} ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("pins-unusable", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_criterion_that_never_returns_ends_the_run_with_4_though_it_is_tolerant()
    {
        var ran = Score("acme.never-returns", "--tolerant", "--plugin-timeout", "2");
        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.StartsWith("The plugin Acme.Unruly did not return within 0:00:02 from the criterion acme.never-returns.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_score_names_every_file_of_its_plugin_and_another_dependency_of_it_is_a_difference_in_versions()
    {
        var profile = folder.Write("p.json", Profile("acme.marks"));
        var record = folder.Write("r.json", Tablets.Slate2);
        string[] plugin = ["--plugin", SamplePlugins.Marks, "--trust-once"];
        var score = Fixscore.Run(["score", record, "--profile", profile, "--json", .. plugin]).Out;
        var units = Path.Combine(Path.GetDirectoryName(SamplePlugins.Marks)!, "Acme.Units.dll");
        var digest = "sha256:" + Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(units)));
        Assert.Contains($"\"file\": \"Acme.Units.dll\",\n          \"digest\": \"{digest}\"", score, StringComparison.Ordinal);

        string[] verify = ["verify", folder.Write("s.json", Encoding.UTF8.GetBytes(score)), "--record", record, "--profile", profile, .. plugin];
        Assert.Equal(0, Fixscore.Run(verify).Code);
        File.WriteAllText(folder.File("s.json"), score.Replace(digest, "sha256:" + new string('0', 64), StringComparison.Ordinal));
        Assert.Contains("/plugins/0/dependencies/0/digest", Fixscore.Run(verify).Out, StringComparison.Ordinal);
        Fixscore.Run(["report", record, "--profile", profile, "--out", folder.File("report.md"), .. plugin]);
        Assert.Contains(digest, File.ReadAllText(folder.File("report.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_score_outside_the_scale_is_refused_or_told_as_the_caller_chose()
    {
        var ran = Score("acme.leaves-scale");
        Assert.Equal((4, ""), (ran.Code, ran.Out));
        Assert.StartsWith("The criterion acme.leaves-scale of Acme.Unruly failed at total (score-left-scale: 11).", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, Score("acme.leaves-scale", "--tolerant").Code);
    }

    [Fact]
    public void What_calls_allocate_is_told_on_standard_error_alone()
    {
        var (measured, plain) = (Score("acme.allocates", "--measure"), Score("acme.allocates"));
        Assert.Equal(plain.Out, measured.Out);
        Assert.Matches(@"Acme\.Unruly: the criterion acme\.allocates, calls: 1, bytes allocated a call: 1[,.]?0\d\d[,.]?\d\d\d\n", measured.Error);
    }

    public void Dispose() => folder.Dispose();

    Ran Score(string criterion, params string[] more) => Fixscore.RunOn(Tablets.Slate2,
        ["score", "-", "--profile", folder.Write("p.json", Profile(criterion)), "--trust-once", "--plugin", SamplePlugins.Unruly, .. more]);

    string Pins(string entry) => folder.Write("pins.json", Encoding.UTF8.GetBytes($$"""{ "plugins": [{{entry}}] }"""));

    static string Entry(string file) => $$"""{ "file": "{{file}}", "sha256": "{{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(file)))}}" }""";

    static byte[] Profile(string criterion) => Encoding.UTF8.GetBytes($$"""
        {
          "format": "fixscore-profile/1", "id": "sample", "version": "1.0.0", "title": "Sample", "status": "draft",
          "source": { "title": "a test", "locator": "here", "date": "2026-01-01" },
          "scale": { "min": 0, "max": 10, "decimals": 1, "rounding": "half-up" },
          "root": { "id": "total", "criterion": "{{criterion}}" }
        }
        """);
}
