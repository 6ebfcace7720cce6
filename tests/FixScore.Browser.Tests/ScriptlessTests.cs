namespace FixScore.Browser.Tests;

/// <summary>A page says the same where scripts are switched off.</summary>
[Collection(Chromium.Shared)]
public sealed class ScriptlessTests(Chromium chromium)
{
    const string Text = "() => document.body.innerText";

    public static TheoryData<string> Names => Pages.Names;

    [BrowserTheory]
    [MemberData(nameof(Names))]
    public async Task Its_text_is_complete_without_scripts(string name)
    {
        var with = await TextOf(() => chromium.Open(name, 1024));
        Assert.True(with.Length > 500);
        Assert.Equal(with, await TextOf(() => chromium.Open(name, 1024, scripts: false)));
    }

    [BrowserFact]
    public async Task Text_that_a_script_writes_is_missed()
    {
        static byte[] Scripted() => """<!DOCTYPE html><title>t</title><p>one</p><script>document.body.append('two')</script>"""u8.ToArray();
        Assert.Contains("two", await TextOf(() => chromium.Open("scripted", Scripted(), 1024)), StringComparison.Ordinal);
        Assert.DoesNotContain("two", await TextOf(() => chromium.Open("scripted", Scripted(), 1024, scripts: false)), StringComparison.Ordinal);
    }

    static async Task<string> TextOf(Func<Task<Visit>> open)
    {
        await using var visit = await open();
        return await visit.Ask<string>(Text);
    }
}
