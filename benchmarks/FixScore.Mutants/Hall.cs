namespace FixScore.Mutants;

/// <summary>A copy of built tests in which the assembly with all mutants lies in place of the one without.</summary>
static class Hall
{
    public static string Of(string tests, string assembly, string root, string folder)
    {
        var hall = Path.Combine(folder, tests);
        var file = Path.Combine(hall, $"{tests}.dll");
        if (File.Exists(file)) return file;
        Shell.Run(root, "build", Path.Combine("tests", tests));
        Copy(Path.Combine(root, "tests", tests, "bin", "Debug", "net10.0"), hall);
        File.Copy(assembly, Path.Combine(hall, Path.GetFileName(assembly)), overwrite: true);
        return file;
    }

    static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
