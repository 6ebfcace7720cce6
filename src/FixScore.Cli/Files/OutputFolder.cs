using System.Collections.Immutable;
using FixScore.Reporting.Paper;

namespace FixScore.Cli.Files;

/// <summary>Writes folders of files, each whole or not at all; files of other names stay as they are.</summary>
static class OutputFolder
{
    public static void Write(string folder, ImmutableArray<PaperFile> files)
    {
        foreach (var inner in files.Select(file => Path.GetDirectoryName(file.Path) ?? "").Distinct()) OutputFile.MakeFolder(Path.Combine(folder, inner));
        foreach (var file in files) OutputFile.Write(Path.Combine(folder, file.Path), file.Bytes.ToArray());
    }
}
