using System.Collections.Immutable;
using System.Text.Json;
using FixScore.Plugins;
using FixScore.Reading;

namespace FixScore;

/// <summary>A list of plugin files, each with its pins: <c>{"plugins": [{"file": "Acme.dll", "sha256": "...", "dependencies": {"Acme.Units.dll": "..."}}]}</c>.</summary>
/// <remarks>Immutable and thread safe. <c>dependencies</c> may be left out by a plugin that brings none.</remarks>
/// <param name="Plugins">The files, their paths full.</param>
public sealed record PluginList(ImmutableArray<PluginRequest> Plugins)
{
    const string Digest = "a SHA-256 in 64 hexadecimal digits";

    /// <summary>Reads a list; all problems come at once.</summary>
    /// <param name="utf8">The text: JSON in UTF-8.</param>
    /// <param name="folder">Where relative paths start.</param>
    public static ReadResult<PluginList> Read(ReadOnlyMemory<byte> utf8, string folder)
    {
        var text = JsonText.WithoutMark(utf8);
        var (document, problem, offset) = JsonText.Parse(text);
        if (document is null) return new(null, Locator.At(text, problem!, offset));
        using (document)
        {
            var context = new ReadingContext();
            var list = Of(document.RootElement, context, folder);
            var problems = context.Problems.Count == 0 ? [] : Locator.Locate(text, context.Problems);
            return new(context.HasErrors ? null : list, problems);
        }
    }

    static PluginList? Of(JsonElement root, ReadingContext context, string folder)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            context.Error(Pointer.Root, "wrong-type", "A list of plugins is an object.", "Write {\"plugins\": [{\"file\": \"Acme.dll\", \"sha256\": \"...\"}]}.");
            return null;
        }
        var reader = new ObjectReader(root, context, Place.Root);
        var plugins = reader.Objects("plugins", plugin => Request(plugin, folder), required: true);
        reader.Done();
        return new(plugins.IsDefault ? [] : plugins);
    }

    static PluginRequest Request(ObjectReader plugin, string folder)
    {
        var file = plugin.Matching("file", text => text.Length > 0 && !text.Contains('\0', StringComparison.Ordinal), "a path");
        var sha256 = plugin.Matching("sha256", PluginPins.IsDigest, Digest);
        var dependencies = plugin.Map("dependencies", (value, at, reader) => reader.MatchingValue(value, at, PluginPins.IsDigest, Digest));
        return new(file.Length > 0 ? Path.GetFullPath(file, folder) : "", sha256) { Dependencies = dependencies.ToImmutableSortedDictionary(StringComparer.Ordinal) };
    }
}
