using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace FixScore.Tests.Samples;

/// <summary>Plugin files as strangers would build them.</summary>
static class SamplePlugins
{
    /// <summary>In good order; brings version 1 of a library along. Criterion <c>acme.marks</c>: always 0.3 of the scale.</summary>
    public static string Marks => File("Acme.Marks");

    /// <summary>In good order; brings version 2 of that library along. Criterion <c>acme.labels</c>: always 0.45 of the scale.</summary>
    public static string Labels => File("Acme.Labels");

    /// <summary>Criteria that break the rules.</summary>
    public static string Unruly => File("Acme.Unruly");

    /// <summary>Cannot be made.</summary>
    public static string Broken => File("Acme.Broken");

    /// <summary>A copy of a plugin's output folder; the path of the plugin in it.</summary>
    public static string Copy(string plugin, string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var file in Directory.GetFiles(Path.GetDirectoryName(plugin)!)) System.IO.File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        return Path.Combine(folder, Path.GetFileName(plugin));
    }

    /// <summary>Makes a file say that it was built for another version of the contract.</summary>
    public static void BuildFor(string file, ushort major, ushort minor) => Change(file, (metadata, start, bytes) =>
    {
        var row = metadata.AssemblyReferences.Select((handle, index) => (Name: metadata.GetString(metadata.GetAssemblyReference(handle).Name), index)).Single(each => each.Name == "FixScore.Abstractions").index;
        // A row of this table begins with four 2-byte numbers of the version (ECMA-335 II.22.5).
        var at = start + metadata.GetTableMetadataOffset(TableIndex.AssemblyRef) + (row * metadata.GetTableRowSize(TableIndex.AssemblyRef));
        BitConverter.TryWriteBytes(bytes.AsSpan(at), major);
        BitConverter.TryWriteBytes(bytes.AsSpan(at + 2), minor);
    });

    /// <summary>Makes a file another build of itself.</summary>
    public static void BuildAgain(string file) => Change(file, (metadata, start, bytes) =>
    {
        var build = metadata.GetGuid(metadata.GetModuleDefinition().Mvid).ToByteArray();
        bytes[bytes.AsSpan().IndexOf(build)] ^= 0xFF;
    });

    static void Change(string file, Action<MetadataReader, int, byte[]> change)
    {
        var bytes = System.IO.File.ReadAllBytes(file);
        using (var reader = new PEReader(new MemoryStream((byte[])bytes.Clone())))
            change(reader.GetMetadataReader(), reader.PEHeaders.MetadataStartOffset, bytes);
        System.IO.File.WriteAllBytes(file, bytes);
    }

    static string File(string name) => Path.Combine(Value("SamplePlugins"), name, Value("SampleBuild"), name + ".dll");

    static string Value(string key) => typeof(SamplePlugins).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(each => each.Key == key).Value!;
}
