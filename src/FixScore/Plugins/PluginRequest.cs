using System.Collections.Immutable;
using FixScore.Plugins;

namespace FixScore;

/// <summary>A plugin file to load and the digests that pin it. Immutable.</summary>
/// <remarks>
/// A pin covers every file that code is loaded from: the plugin, and the assemblies beside it that it refers to, directly or through
/// each other. Each is read once; the bytes that were digested are the bytes that run. Native libraries beside a plugin are never loaded.
/// A pin says that a file is the one somebody trusted, not that it is harmless: it runs with all rights of whoever runs the program.
/// </remarks>
/// <param name="File">The path of the plugin's assembly.</param>
/// <param name="Sha256">SHA-256 of the file in 64 hexadecimal digits, with or without <c>sha256:</c> before them; <c>null</c> for no pin.</param>
public sealed record PluginRequest(string File, string? Sha256 = null)
{
    /// <summary>The same of each assembly that the plugin brings along, by file name; none when it brings none.</summary>
    public ImmutableSortedDictionary<string, string> Dependencies { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Whether a text is a SHA-256 as pins are written.</summary>
    public static bool IsDigest(string text) => PluginPins.IsDigest(text);
}
