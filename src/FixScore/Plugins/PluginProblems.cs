using System.Reflection;

namespace FixScore.Plugins;

/// <summary>Everything that can be wrong with a plugin file.</summary>
static class PluginProblems
{
    const string AskAuthor = "Tell whoever wrote the plugin, or leave it out.";

    public static Problem Missing() => Error("plugin-file-missing", "There is no such file.", "Correct the path.");

    public static Problem Unreadable() => Error("plugin-file-unreadable", "It cannot be read.", "Check that it is a file and that you may read it.");

    public static Problem NotAnAssembly() => Error("plugin-not-an-assembly", "It is not a .NET assembly.", "Name the .dll that building the plugin made.");

    public static Problem NotNamed() => Error("plugin-not-named", "It names no plugin: the assembly attribute Plugin<...> of {contract} is missing.",
        "Name the plugin's own .dll, not one that it uses; its author writes [assembly: Plugin<YourPlugin>].", ("contract", Contracts.Main));

    public static Problem OtherContract(AssemblyName by, Version found, Version own) => found.Major == own.Major
        ? Error("plugin-needs-newer-contract", "{by} was built for version {found} of the contract {contract}; this program has {own}.",
            "Update this program, or get the plugin built for a version no later than its own.", ("by", by.Name!), ("found", found.ToString(2)), ("contract", Contracts.Main), ("own", own.ToString(2)))
        : Error("plugin-other-contract", "{by} was built for version {found} of the contract {contract}; this program has {own}, and major versions do not mix.",
            "Get the plugin built for this program's major version.", ("by", by.Name!), ("found", found.ToString(2)), ("contract", Contracts.Main), ("own", own.ToString(2)));

    public static Problem ListUnreadable(string file) => Error("plugin-dependency-list-unreadable", "The list of its dependencies, {file}, cannot be read.",
        "Build the plugin again and copy its whole output folder.", ("file", file));

    public static Problem DependencyMissing(AssemblyName by, AssemblyName asked) => Error("plugin-dependency-missing", "{by} needs {asked} {version}, which is neither beside it nor part of this program.",
        "Copy the plugin's whole output folder, not the .dll alone; its author publishes with 'dotnet publish'.", ("by", by.Name!), ("asked", asked.Name!), ("version", Text(asked.Version)));

    public static Problem DependencyOld(AssemblyName by, AssemblyName asked, PluginImage found) => Error("plugin-dependency-old", "{by} needs {asked} {version}; {file} is version {found}.",
        "Copy the plugin's whole output folder into a folder of its own.", ("by", by.Name!), ("asked", asked.Name!), ("version", Text(asked.Version)), ("file", found.File), ("found", Text(found.Name.Version)));

    public static Problem DependencyUnreadable(AssemblyName by, string file) => Error("plugin-dependency-unreadable", "{by} needs {file}, which cannot be read or is not a .NET assembly.",
        "Copy the plugin's whole output folder again.", ("by", by.Name!), ("file", file));

    public static Problem Unpinned(string hint) => Error("plugin-unpinned", "It is not pinned: nobody has said which file of that name is trusted.", hint);

    public static Problem Changed(string pin, string found, string hint) => Error("plugin-changed", "It is not the file that was pinned: its SHA-256 is {found}, the pin says {pin}.", hint, ("found", found), ("pin", pin));

    public static Problem DependencyUnpinned(string name, string hint) => Error("plugin-dependency-unpinned", "It brings {name} along, which is not pinned.", hint, ("name", name));

    public static Problem DependencyChanged(string name, string pin, string found, string hint) => Error("plugin-dependency-changed",
        "The {name} that it brings along is not the file that was pinned: its SHA-256 is {found}, the pin says {pin}.", hint, ("name", name), ("found", found), ("pin", pin));

    public static Problem WrongPlatform() => Error("plugin-wrong-platform", "It was built for another kind of processor, or is damaged.", "Get the plugin built for any processor (AnyCPU).");

    public static Problem TypeMissing(string what) => Error("plugin-type-missing", "It uses something that is not there: {what}", "Some file is of another version than the plugin was built with. Copy its whole output folder; else tell its author.", ("what", what));

    public static Problem Threw(string exception) => Error("plugin-threw", "It failed while it was made or registered ({exception}).", AskAuthor, ("exception", exception));

    public static Problem Unusable(string why) => Error("plugin-offer-unusable", "{why}", AskAuthor, ("why", why));

    public static Problem IdTaken(string why) => Error("plugin-id-taken", "{why}", "Leave one of the two out; ids begin with the name of their maker so that they stay apart.", ("why", why));

    static string Text(Version? version) => version?.ToString() ?? "of any version";

    static Problem Error(string code, string template, string hint, params ReadOnlySpan<(string, Value)> values) =>
        Problem.Of(Severity.Error, Pointer.Root, code, template, hint, values);
}
