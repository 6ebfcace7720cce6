using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Runtime.Loader;

namespace FixScore.Plugins;

/// <summary>A plugin's own room: its dependencies beside those of others, contracts shared with the program.</summary>
/// <remarks>Unloaded by the runtime once nothing of the plugin is referred to any more, which a catalogue does.</remarks>
[RequiresUnreferencedCode("Loads an assembly that the trimmer cannot see.")]
sealed class PluginContext(PluginFiles files) : AssemblyLoadContext(files.Plugin.File, isCollectible: true)
{
    public Assembly LoadPlugin() => LoadFromStream(files.Plugin.Open());

    // Only bytes that were read before: a file that is changed in the meantime changes nothing.
    protected override Assembly? Load(AssemblyName assemblyName) =>
        files.Find(assemblyName) is { } image ? LoadFromStream(image.Open()) : null;
}
