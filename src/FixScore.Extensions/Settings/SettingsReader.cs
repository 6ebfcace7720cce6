using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Extensions.Configuration;

namespace FixScore.Settings;

/// <summary>Reads the section <c>FixScore</c> of a configuration and goes on after the first problem.</summary>
/// <remarks>By hand rather than by a binder, which passes over what it does not know.</remarks>
sealed class SettingsReader(string baseFolder)
{
    public const string Section = "FixScore";

    static readonly string[] Keys = ["profileFolders", "defaultProfile", "plugins"];

    static readonly string[] PluginKeys = ["file", "sha256", "dependencies"];

    readonly List<Problem> problems = [];

    public static StatedSettings Read(IConfiguration? settings, string baseFolder) => settings switch
    {
        null => StatedSettings.None,
        IConfigurationSection section when Same(section.Key, Section) => new SettingsReader(baseFolder).Read(section),
        _ => new SettingsReader(baseFolder).Read(settings.GetSection(Section)),
    };

    public static StatedSettings ReadFile(string file, string baseFolder)
    {
        try
        {
            return Read(new ConfigurationBuilder().AddJsonFile(file, optional: false, reloadOnChange: false).Build(), baseFolder);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException or FormatException)
        {
            var why = failure is FileNotFoundException or DirectoryNotFoundException ? "there is no such file" : (failure.InnerException ?? failure).Message;
            return StatedSettings.None with { Problems = [SettingsProblems.FileUnreadable(file, why)] };
        }
    }

    StatedSettings Read(IConfigurationSection section)
    {
        var at = Pointer.Root.Child(Section);
        Unknown(section, at, Keys);
        if (section.Value is { Length: > 0 }) problems.Add(SettingsProblems.WrongKind(at, "an object"));
        return new([.. Paths(section, Keys[0])], [.. Plugins(section.GetSection(Keys[2]), at.Child(Keys[2]))], Name(section.GetSection(Keys[1]), at.Child(Keys[1])), [.. problems]);
    }

    List<Stated> Paths(IConfigurationSection section, string key)
    {
        var (list, at, paths) = (section.GetSection(key), Pointer.Root.Child(Section).Child(key), new List<Stated>());
        if (list.Value is { Length: > 0 }) problems.Add(SettingsProblems.WrongKind(at, "a list of paths"));
        foreach (var entry in list.GetChildren())
        {
            if (!int.TryParse(entry.Key, NumberStyles.None, CultureInfo.InvariantCulture, out _)) problems.Add(SettingsProblems.WrongKind(at, "a list of paths"));
            else if (entry.Value is not { Length: > 0 } path || path.Contains('\0', StringComparison.Ordinal)) problems.Add(SettingsProblems.WrongKind(at.Child(entry.Key), "a path"));
            else paths.Add(new(Path.GetFullPath(path, baseFolder), at.Child(entry.Key)));
        }
        return paths;
    }

    List<StatedPlugin> Plugins(IConfigurationSection list, Pointer at)
    {
        var plugins = new List<StatedPlugin>();
        if (list.Value is { Length: > 0 }) problems.Add(SettingsProblems.WrongKind(at, "a list of plugins"));
        foreach (var entry in list.GetChildren())
        {
            if (!int.TryParse(entry.Key, NumberStyles.None, CultureInfo.InvariantCulture, out _)) problems.Add(SettingsProblems.WrongKind(at, "a list of plugins"));
            else if (Plugin(entry, at.Child(entry.Key)) is { } plugin) plugins.Add(new(plugin, at.Child(entry.Key)));
        }
        return plugins;
    }

    // A path by itself is a plugin without pins.
    PluginRequest? Plugin(IConfigurationSection entry, Pointer at)
    {
        var isPath = !entry.GetChildren().Any();
        var path = isPath ? entry.Value : entry["file"];
        if (path is not { Length: > 0 } || path.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add(SettingsProblems.WrongKind(at, "an object with 'file' and 'sha256', or a path"));
            return null;
        }
        Unknown(entry, at, PluginKeys);
        var dependencies = entry.GetSection("dependencies").GetChildren().ToImmutableSortedDictionary(each => each.Key, each => Digest(each, at.Child("dependencies").Child(each.Key)) ?? "", StringComparer.OrdinalIgnoreCase);
        return new(Path.GetFullPath(path, baseFolder), isPath ? null : Digest(entry.GetSection("sha256"), at.Child("sha256"))) { Dependencies = dependencies };
    }

    string? Digest(IConfigurationSection entry, Pointer at)
    {
        if (entry.Value is { } text && !PluginRequest.IsDigest(text) || entry.GetChildren().Any()) problems.Add(SettingsProblems.NotADigest(at));
        return entry.Value;
    }

    void Unknown(IConfigurationSection section, Pointer at, string[] keys)
    {
        foreach (var key in section.GetChildren().Select(child => child.Key).Where(key => !keys.Any(known => Same(known, key))))
            problems.Add(SettingsProblems.KeyUnknown(at.Child(key), key, keys));
    }

    Stated? Name(IConfigurationSection entry, Pointer at)
    {
        if (!entry.GetChildren().Any()) return entry.Value is { Length: > 0 } name ? new(name, at) : null;
        problems.Add(SettingsProblems.WrongKind(at, "the name of a profile"));
        return null;
    }

    // Configuration keys are the same in any case.
    static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
