using System.Collections.Immutable;
using FixScore.Analysis.Comparing;
using FixScore.Reporting.Tables;

namespace FixScore.Reporting.Paper;

/// <summary>A file that goes into the folder as it is.</summary>
/// <param name="Name">Its name, without folders.</param>
/// <param name="Bytes">Its bytes.</param>
/// <param name="About">What it is, with version and digest.</param>
public sealed record PaperSource(string Name, ReadOnlyMemory<byte> Bytes, string About);

/// <summary>All that a paper's folder is made of. Immutable.</summary>
/// <param name="Comparison">The comparison.</param>
/// <param name="Names">Names of the units in figures.</param>
/// <param name="Records">Records, or the table, in the order compared.</param>
/// <param name="Profiles">Profiles and their bases; empty for a table.</param>
/// <param name="Studies">What weights do, for each set of rules that weighs: a figure for each.</param>
/// <param name="More">Tables beside those of the comparison.</param>
/// <param name="Methods">Sentences on what was done besides, such as draws and seed.</param>
/// <param name="Command">The command that makes the folder again, run inside it.</param>
/// <param name="Version">Version of the kernel.</param>
public sealed record PaperInput(
    ProfileComparison Comparison, ImmutableArray<string> Names, ImmutableArray<PaperSource> Records, ImmutableArray<PaperSource> Profiles,
    ImmutableArray<WeightStudy> Studies, ImmutableArray<ResultTable> More, ImmutableArray<string> Methods, string Command, string Version);

/// <summary>A file of the folder.</summary>
/// <param name="Path">Its path inside, with <c>/</c>.</param>
/// <param name="Bytes">Its bytes.</param>
public sealed record PaperFile(string Path, ReadOnlyMemory<byte> Bytes);
