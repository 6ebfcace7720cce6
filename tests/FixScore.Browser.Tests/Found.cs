namespace FixScore.Browser.Tests;

/// <summary>Lists that must be empty, printed whole when they are not.</summary>
static class Found
{
    public static void Nothing(IEnumerable<string> faults, string where)
    {
        string[] all = [.. faults];
        Assert.True(all.Length == 0, $"{where}: {all.Length}\n{string.Join('\n', all)}");
    }
}
