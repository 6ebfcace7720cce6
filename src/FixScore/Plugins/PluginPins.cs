using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FixScore.Plugins;

/// <summary>Holds the files of a plugin against what was pinned.</summary>
static class PluginPins
{
    const string Prefix = "sha256:";

    public static ImmutableArray<Problem> Check(PluginFiles files, PluginRequest request)
    {
        var hint = HintOf(files);
        if (request.Sha256 is not { } pin) return [PluginProblems.Unpinned(hint)];
        var problems = ImmutableArray.CreateBuilder<Problem>();
        if (!Same(pin, files.Plugin.Digest)) problems.Add(PluginProblems.Changed(Bare(pin), Bare(files.Plugin.Digest), hint));
        foreach (var image in files.Brought)
        {
            var name = Path.GetFileName(image.File);
            if (!request.Dependencies.TryGetValue(name, out var other)) problems.Add(PluginProblems.DependencyUnpinned(name, hint));
            else if (!Same(other, image.Digest)) problems.Add(PluginProblems.DependencyChanged(name, Bare(other), Bare(image.Digest), hint));
        }
        return problems.DrainToImmutable();
    }

    /// <summary>Whether a text can be a digest at all.</summary>
    public static bool IsDigest(string text) => Bare(text) is { Length: 64 } digits && digits.All(char.IsAsciiHexDigit);

    static bool Same(string pin, string digest) => string.Equals(Bare(pin), Bare(digest), StringComparison.OrdinalIgnoreCase);

    static string Bare(string digest) => digest.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase) ? digest[Prefix.Length..] : digest;

    // Broken into lines: it is there to be copied.
    static string HintOf(PluginFiles files)
    {
        var entry = $"\"file\": {Quoted(files.Plugin.File)}, \"sha256\": \"{Bare(files.Plugin.Digest)}\"";
        var dependencies = string.Join(",\n    ", files.Brought.Select(each => $"{Quoted(Path.GetFileName(each.File))}: \"{Bare(each.Digest)}\""));
        return $"It runs with your rights. If you trust it as it is, pin it:\n{{ {entry}{(dependencies.Length == 0 ? "" : $",\n  \"dependencies\": {{\n    {dependencies} }}")} }}";
    }

    static string Quoted(string text) => $"\"{JsonEncodedText.Encode(text, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
