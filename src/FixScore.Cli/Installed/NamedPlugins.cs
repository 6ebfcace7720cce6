using FixScore.Cli.Files;

namespace FixScore.Cli.Installed;

/// <summary>The plugin files that a command line names, with the pins it names.</summary>
sealed class NamedPlugins(CommandSession session, string[] files, string[] lists)
{
    /// <summary>Each file once; a pinned entry before one without pins.</summary>
    /// <exception cref="InputException">A list cannot be read; its problems are printed.</exception>
    public IEnumerable<PluginRequest> All()
    {
        var pinned = lists.SelectMany(Read).ToArray();
        return [.. pinned, .. files.Where(file => !pinned.Any(each => each.File == Path.GetFullPath(file))).Select(file => new PluginRequest(file))];
    }

    IEnumerable<PluginRequest> Read(string list)
    {
        var input = session.Read(list);
        var read = PluginList.Read(input.Bytes, list == Input.StandardInput ? Directory.GetCurrentDirectory() : Path.GetDirectoryName(Path.GetFullPath(list))!);
        session.Problems.Print(input.Name, read.Problems);
        return read.Value?.Plugins ?? throw new InputException(input.Name, "pins-unusable", "this list of plugins cannot be used", "Nothing was loaded.");
    }
}
