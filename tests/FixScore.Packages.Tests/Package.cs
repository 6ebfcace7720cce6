using System.IO.Compression;
using System.Xml.Linq;

namespace FixScore.Packages.Tests;

/// <summary>One packed file.</summary>
sealed class Package
{
    readonly XElement nuspec;
    readonly string path;

    public Package(string path)
    {
        this.path = path;
        using var zip = ZipFile.OpenRead(path);
        Entries = [.. zip.Entries.Select(entry => entry.FullName)];
        nuspec = XElement.Parse(System.Text.Encoding.UTF8.GetString(Read(Entries.Single(entry => entry.EndsWith(".nuspec", StringComparison.Ordinal)))).TrimStart('\uFEFF'));
    }

    public string Id => Text("id");

    public string Version => Text("version");

    /// <summary>Names of all files in it.</summary>
    public string[] Entries { get; }

    /// <summary>The tool, or what it is on one platform.</summary>
    public bool IsTool => Type is "DotnetTool" or "DotnetToolRidPackage";

    /// <summary>What kind of package it says to be; <c>null</c> for a library.</summary>
    public string? Type => Element("packageType")?.Attribute("name")?.Value;

    public string SymbolsPath => Path.ChangeExtension(path, ".snupkg");

    public string[] Dependencies => [.. nuspec.Descendants().Where(each => each.Name.LocalName == "dependency").Select(each => each.Attribute("id")!.Value)];

    public XElement? Element(string name) => nuspec.Descendants().FirstOrDefault(each => each.Name.LocalName == name);

    public string Text(string name) => Element(name)?.Value ?? "";

    public byte[] Read(string entry)
    {
        using var zip = ZipFile.OpenRead(path);
        using var stream = zip.GetEntry(entry)!.Open();
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }

    public override string ToString() => Id;
}
