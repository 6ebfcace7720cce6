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
        var hint = HintOf(files, request);
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

    static string HintOf(PluginFiles files, PluginRequest request)
    {
        var dependencies = string.Join(", ", files.Brought.Select(each => $"\"{Path.GetFileName(each.File)}\": \"{Bare(each.Digest)}\""));
        var entry = $"\"file\": \"{JsonEncodedText.Encode(request.File, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\", \"sha256\": \"{Bare(files.Plugin.Digest)}\"";
        return $"It runs with your rights. If you trust it as it is, pin it: {{ {entry}{(dependencies.Length == 0 ? "" : $", \"dependencies\": {{ {dependencies} }}")} }}.";
    }
}
