using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.Loader;

namespace FixScore.Plugins;

/// <summary>A plugin and the assemblies beside it that it refers to, directly or through each other. All read, none loaded.</summary>
sealed class PluginFiles
{
    readonly Dictionary<string, PluginImage> brought = new(StringComparer.OrdinalIgnoreCase);
    readonly List<Problem> problems = [];
    readonly List<PluginImage> inOrder = [];

    PluginFiles(PluginImage plugin) => Plugin = plugin;

    public PluginImage Plugin { get; }

    /// <summary>What the plugin brings along, by file name.</summary>
    public IEnumerable<PluginImage> Brought => inOrder.OrderBy(each => Path.GetFileName(each.File), StringComparer.Ordinal);

    /// <summary>What the plugin brings along, as documents name it.</summary>
    public ImmutableArray<PluginDependency> Dependencies => [.. Brought.Select(each => new PluginDependency(Path.GetFileName(each.File), each.Digest))];

    /// <exception cref="PluginFileException">It is no plugin, is for another contract, or lacks something; names all of it.</exception>
    public static PluginFiles Read(string path, string full)
    {
        var files = new PluginFiles(First(path, full));
        if (!files.Plugin.NamesPlugin) throw new PluginFileException(path, [PluginProblems.NotNamed()]);
        files.Follow(Resolver(path, full));
        return files.problems.Count == 0 ? files : throw new PluginFileException(path, [.. files.problems]);
    }

    public PluginImage? Find(AssemblyName name) => brought.GetValueOrDefault(name.Name!);

    static PluginImage First(string path, string full)
    {
        try
        {
            return PluginImage.Read(full);
        }
        catch (BadImageFormatException failure)
        {
            throw new PluginFileException(path, [PluginProblems.NotAnAssembly()], failure);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new PluginFileException(path, [failure is FileNotFoundException or DirectoryNotFoundException ? PluginProblems.Missing() : PluginProblems.Unreadable()], failure);
        }
    }

    static AssemblyDependencyResolver Resolver(string path, string full)
    {
        try
        {
            return new(full);
        }
        catch (InvalidOperationException failure)
        {
            throw new PluginFileException(path, [PluginProblems.ListUnreadable(Path.ChangeExtension(full, ".deps.json"))], failure);
        }
    }

    void Follow(AssemblyDependencyResolver resolver)
    {
        var open = new Queue<PluginImage>([Plugin]);
        while (open.TryDequeue(out var by))
            foreach (var asked in by.References)
                if (Settle(by, asked, resolver) is { } next) open.Enqueue(next);
    }

    // What a reference adds to the files; null when it adds none.
    PluginImage? Settle(PluginImage by, AssemblyName asked, AssemblyDependencyResolver resolver)
    {
        if (asked.Name == Contracts.Main && !Contracts.Serves(Contracts.Own, asked.Version!)) problems.Add(PluginProblems.OtherContract(by.Name, asked.Version!, Contracts.Own));
        if (Contracts.TakesOwn(asked)) return null;
        if (Find(asked) is not { } found)
        {
            if (resolver.ResolveAssemblyToPath(asked) is { } path && File.Exists(path)) return Bring(by, asked, path);
            if (Contracts.Host(asked) is null) problems.Add(PluginProblems.DependencyMissing(by.Name, asked));
            return null;
        }
        if (found.Name.Version < asked.Version) problems.Add(PluginProblems.DependencyOld(by.Name, asked, found));
        return null;
    }

    PluginImage? Bring(PluginImage by, AssemblyName asked, string path)
    {
        try
        {
            var image = PluginImage.Read(path);
            brought.Add(asked.Name!, image);
            inOrder.Add(image);
            if (image.Name.Version < asked.Version) problems.Add(PluginProblems.DependencyOld(by.Name, asked, image));
            return image;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or BadImageFormatException)
        {
            problems.Add(PluginProblems.DependencyUnreadable(by.Name, path));
            return null;
        }
    }
}
