using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using FixScore.Canonical;

namespace FixScore;

/// <summary>Loads plugin files. A plugin runs with all rights of whoever runs the program.</summary>
public static class PluginFile
{
    /// <summary>Adds the plugin of a file: the one its assembly names by <see cref="PluginAttribute{TPlugin}"/>.</summary>
    /// <exception cref="PluginFileException">The file cannot be read, is no .NET assembly, names no plugin, or its plugin cannot be made or registered.</exception>
    [RequiresUnreferencedCode("Loads an assembly that the trimmer cannot see.")]
    public static CatalogueBuilder AddFile(this CatalogueBuilder builder, string path)
    {
        try
        {
            var full = Path.GetFullPath(path);
            var digest = Digest.Of(File.ReadAllBytes(full));
            var named = Assembly.LoadFrom(full).GetCustomAttributes<PluginAttribute>().ToArray();
            if (named.Length == 0) throw new PluginFileException(path, "it names no plugin (an assembly attribute Plugin<...> is missing)");
            foreach (var attribute in named) builder.Add(attribute.Create(), digest);
            return builder;
        }
        catch (Exception failure) when (failure is not (PluginFileException or OperationCanceledException))
        {
            throw new PluginFileException(path, Explain(failure), failure);
        }
    }

    static string Explain(Exception failure) => failure switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        BadImageFormatException => "it is not a .NET assembly",
        TypeLoadException or MissingMethodException => "it was built for another version of the contract",
        ArgumentException => failure.Message,
        _ => failure.GetType().Name,
    };
}

/// <summary>A plugin file that cannot be used.</summary>
/// <param name="path">The file.</param>
/// <param name="why">Why, in a phrase.</param>
/// <param name="inner">What happened.</param>
public sealed class PluginFileException(string path, string why, Exception? inner = null)
    : Exception($"The plugin file {path} cannot be used: {why}.", inner)
{
    /// <summary>The file.</summary>
    public string Path { get; } = path;
}
