using System.Reflection;

namespace FixScore.Tests.Support;

/// <summary>Texts that somebody has read and found right, one file each.</summary>
/// <remarks>After a wanted change run the tests with FIXSCORE_APPROVE=1, then read what git says has changed.</remarks>
static class Approved
{
    static readonly string Folder = Path.Combine(
        typeof(Approved).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == "ProjectFolder").Value!, "Approved");

    public static void Matches(string name, string text)
    {
        var file = Path.Combine(Folder, Path.HasExtension(name) ? name : name + ".txt");
        if (Environment.GetEnvironmentVariable("FIXSCORE_APPROVE") == "1") File.WriteAllText(file, text);
        Assert.True(File.Exists(file), $"Nobody has approved {name}.");
        Assert.Equal(File.ReadAllText(file).ReplaceLineEndings("\n"), text);
    }
}
