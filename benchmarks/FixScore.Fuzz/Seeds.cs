using System.Reflection;
using FixScore.Cli.Installed;

namespace FixScore.Fuzz;

/// <summary>Files that are right, from which wrong ones are made, and what is installed.</summary>
static class Seeds
{
    static readonly Assembly Own = typeof(Seeds).Assembly;

    public static Installation Installed { get; } = Installation.Of([], [], PluginTerms.Usual);

    public static byte[][] Records { get; } = Folder("records/");

    public static byte[][] Profiles { get; } = Folder("profiles/");

    public static byte[][] Settings { get; } = Folder("settings/");

    /// <summary>Records that can be scored, read.</summary>
    public static RecordDocument[] Scorable { get; } =
        [.. Records.Select(text => RecordFile.Read(text, Installed.Catalogue).Value).OfType<RecordDocument>().OrderBy(each => each.Record.Parts.Count)];

    /// <summary>The built-in profiles that are for every device.</summary>
    public static Profile[] ForAll { get; } =
        [.. Installed.Library.Entries.Select(entry => ProfileFile.Read(entry.Text, Installed.Catalogue, Installed.Library).OrThrow()).Where(profile => profile.AppliesTo is null)];

    static byte[][] Folder(string folder) =>
        [.. Own.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(Bytes).OrderBy(bytes => bytes.Length)];

    static byte[] Bytes(string name)
    {
        using var stream = Own.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
