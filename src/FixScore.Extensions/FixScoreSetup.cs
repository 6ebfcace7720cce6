using FixScore.Settings;

namespace FixScore;

/// <summary>Settings in code, for one call of <c>AddFixScore</c>. Not thread safe.</summary>
public sealed class FixScoreSetup
{
    readonly List<string> folders = [];
    readonly List<PluginRequest> plugins = [];
    string? profile;

    FixScoreSetup(string baseFolder) => BaseFolder = baseFolder;

    /// <summary>The folder that relative paths of this call start from; at first the current directory, or that of the settings file.</summary>
    public string BaseFolder { get; set; }

    /// <summary>Adds a folder of profiles.</summary>
    public FixScoreSetup AddProfileFolder(string folder)
    {
        folders.Add(folder);
        return this;
    }

    /// <summary>On which terms plugin files are loaded and called, in all calls together: the last that are stated hold.</summary>
    public PluginTerms? PluginTerms { get; set; }

    /// <summary>Adds a plugin file. It runs with all rights of the program.</summary>
    /// <param name="file">The file.</param>
    /// <param name="sha256">Its pin; without one it is refused, unless <see cref="PluginTerms"/> trust what is not pinned.</param>
    public FixScoreSetup AddPluginFile(string file, string? sha256 = null) => AddPluginFile(new PluginRequest(file, sha256));

    /// <summary>Adds a plugin file that brings assemblies along, with the pins of all. It runs with all rights of the program.</summary>
    public FixScoreSetup AddPluginFile(PluginRequest plugin)
    {
        plugins.Add(plugin);
        return this;
    }

    /// <summary>Chooses the profile that scores when none is named: <c>ID</c> (its newest version) or <c>ID@VERSION</c>.</summary>
    public FixScoreSetup UseProfile(string name)
    {
        profile = name;
        return this;
    }

    internal static FixScoreSetup Of(Action<FixScoreSetup>? setup, string baseFolder)
    {
        var chosen = new FixScoreSetup(baseFolder);
        setup?.Invoke(chosen);
        return chosen;
    }

    // The root pointer says: stated in code, not in a file.
    internal StatedSettings Stated() => new(
        [.. folders.Select(folder => new Stated(Path.GetFullPath(folder, BaseFolder), Pointer.Root))],
        [.. plugins.Select(plugin => new StatedPlugin(plugin with { File = Path.GetFullPath(plugin.File, BaseFolder) }, Pointer.Root))],
        profile is null ? null : new(profile, Pointer.Root),
        [], PluginTerms);
}
