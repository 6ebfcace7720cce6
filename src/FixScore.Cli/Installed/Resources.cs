using System.Reflection;

namespace FixScore.Cli.Installed;

/// <summary>Files embedded in the program.</summary>
static class Resources
{
    static readonly Assembly Own = typeof(Resources).Assembly;

    public static IEnumerable<string> Names(string folder) =>
        Own.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    public static byte[] Bytes(string name)
    {
        using var stream = Own.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
