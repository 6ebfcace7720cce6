using System.Reflection;

namespace FixScore.Mutants.Trying;

/// <summary>The switch inside the assembly with all mutants: which one is on, and which ones were reached.</summary>
sealed class MutantSwitch
{
    readonly FieldInfo active;
    readonly FieldInfo capture;
    readonly MethodInfo reached;

    MutantSwitch(Type control)
    {
        active = control.GetField("ActiveMutant")!;
        capture = control.GetField("CaptureCoverage")!;
        reached = control.GetMethod("GetCoverageData")!;
        control.GetMethod("InitCoverage")?.Invoke(null, null);
    }

    /// <summary>The switch of the first assembly that has one.</summary>
    public static MutantSwitch In(string folder) => new(
        Directory.EnumerateFiles(folder, "FixScore*.dll").Order(StringComparer.Ordinal)
            .Where(file => File.ReadAllBytes(file).AsSpan().IndexOf("MutantControl"u8) >= 0)
            .SelectMany(file => Assembly.Load(Path.GetFileNameWithoutExtension(file)).GetTypes())
            .First(type => type.Name == "MutantControl"));

    /// <summary>Number of the mutant that is on; below zero for none.</summary>
    public int Active
    {
        set => active.SetValue(null, value);
    }

    /// <summary>Whether reached mutants are noted.</summary>
    public bool Captures
    {
        set => capture.SetValue(null, value);
    }

    /// <summary>Mutants reached since the last time; and which of them while something static was made.</summary>
    public (int[] All, int[] Once) Reached()
    {
        var lists = (IList<int>[])reached.Invoke(null, null)!;
        return ([.. lists[0].Concat(lists[1]).Distinct()], [.. lists[1].Distinct()]);
    }
}
