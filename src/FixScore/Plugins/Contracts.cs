using System.Reflection;
using System.Runtime.Loader;

namespace FixScore.Plugins;

/// <summary>What plugins share with the program: contracts and facts, of which there is one copy, and what .NET itself brings.</summary>
static class Contracts
{
    public const string Main = "FixScore.Abstractions";

    static readonly string[] Shared = [Main, "FixScore.Disassembly", "FixScore.Pairing"];

    public static Version Own { get; } = typeof(ICriterion).Assembly.GetName().Version!;

    /// <summary>Whether the program's copy serves a plugin built for another: the same major version, the minor no lower.</summary>
    public static bool Serves(Version own, Version asked) => own.Major == asked.Major && own.Minor >= asked.Minor;

    /// <summary>Whether a plugin takes this from the program rather than from beside itself.</summary>
    public static bool TakesOwn(AssemblyName asked)
    {
        if (Array.IndexOf(Shared, asked.Name) >= 0) return asked.Name == Main || Host(new(asked.Name!)) is { } own && Serves(own.Version!, asked.Version!);
        return File.Exists(Path.Combine(System.Runtime.InteropServices.RuntimeEnvironment.GetRuntimeDirectory(), asked.Name + ".dll")) && Host(asked) is not null;
    }

    /// <summary>What the program has by that name, in that version or a later one; <c>null</c> when it has none.</summary>
    public static AssemblyName? Host(AssemblyName asked)
    {
        try
        {
            return AssemblyLoadContext.Default.LoadFromAssemblyName(asked).GetName();
        }
        catch (Exception failure) when (failure is IOException or BadImageFormatException)
        {
            return null;
        }
    }
}
