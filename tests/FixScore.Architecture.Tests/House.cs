using System.Reflection;

namespace FixScore.Architecture.Tests;

/// <summary>The source tree and the assemblies built from it.</summary>
static class House
{
    public static string Root { get; } = typeof(House).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == "Repository").Value!;

    /// <summary>Names of the assemblies that ship, from the names of the projects.</summary>
    public static string[] Rooms { get; } = [.. Projects("src").Concat(Projects("plugins")).Select(Path.GetFileNameWithoutExtension).OfType<string>().Order(StringComparer.Ordinal)];

    public static IEnumerable<string> Plugins => Rooms.Where(IsPlugin);

    public static bool IsPlugin(string room) =>
        room.StartsWith("FixScore.Criteria.", StringComparison.Ordinal) || room.StartsWith("FixScore.Requirements.", StringComparison.Ordinal);

    public static Assembly Load(string room) => Assembly.LoadFrom(PathOf(room));

    public static string PathOf(string room) => Path.Combine(AppContext.BaseDirectory, room + ".dll");

    public static IEnumerable<string> Projects(string folder) => Files(folder, "*.csproj");

    /// <summary>Files written by people, as paths from the root, in order.</summary>
    public static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.GetFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal);

    public static string[] Lines(string path) => File.ReadAllLines(Path.Combine(Root, path));

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path));
}
