using System.Collections.Immutable;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Runtime.InteropServices;
using FixScore.Canonical;

namespace FixScore.Plugins;

/// <summary>An assembly's bytes, read once, and what its metadata say. Nothing of it is loaded.</summary>
/// <param name="File">Where it was read from.</param>
/// <param name="Bytes">The bytes.</param>
/// <param name="Name">The assembly.</param>
/// <param name="References">Assemblies it refers to.</param>
/// <param name="NamesPlugin">Whether it bears the attribute that names a plugin.</param>
sealed record PluginImage(string File, ImmutableArray<byte> Bytes, AssemblyName Name, ImmutableArray<AssemblyName> References, bool NamesPlugin)
{
    public string Digest { get; } = Canonical.Digest.Of(Bytes.AsSpan());

    public MemoryStream Open() => new(ImmutableCollectionsMarshal.AsArray(Bytes)!, writable: false);

    /// <exception cref="BadImageFormatException">It is no .NET assembly.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static PluginImage Read(string file)
    {
        var bytes = ImmutableCollectionsMarshal.AsImmutableArray(System.IO.File.ReadAllBytes(file));
        using var reader = new PEReader(bytes);
        if (!reader.HasMetadata || reader.GetMetadataReader() is not { IsAssembly: true } metadata) throw new BadImageFormatException();
        return new(file, bytes, metadata.GetAssemblyDefinition().GetAssemblyName(),
            [.. metadata.AssemblyReferences.Select(each => metadata.GetAssemblyReference(each).GetAssemblyName())],
            metadata.GetAssemblyDefinition().GetCustomAttributes().Any(each => Names(metadata, metadata.GetCustomAttribute(each).Constructor)));
    }

    // The constructor belongs to a generic type: 0x15, class, the type itself, its arguments (ECMA-335 II.23.2.14).
    static bool Names(MetadataReader metadata, EntityHandle constructor)
    {
        if (constructor.Kind != HandleKind.MemberReference) return false;
        if (metadata.GetMemberReference((MemberReferenceHandle)constructor).Parent is not { Kind: HandleKind.TypeSpecification } parent) return false;
        var signature = metadata.GetBlobReader(metadata.GetTypeSpecification((TypeSpecificationHandle)parent).Signature);
        if (signature.ReadByte() != 0x15 || signature.ReadByte() != 0x12) return false;
        return signature.ReadTypeHandle() is { Kind: HandleKind.TypeReference } type && IsAttribute(metadata, metadata.GetTypeReference((TypeReferenceHandle)type));
    }

    static bool IsAttribute(MetadataReader metadata, TypeReference type) =>
        metadata.StringComparer.Equals(type.Name, "PluginAttribute`1") && metadata.StringComparer.Equals(type.Namespace, "FixScore")
        && type.ResolutionScope is { Kind: HandleKind.AssemblyReference } scope
        && metadata.StringComparer.Equals(metadata.GetAssemblyReference((AssemblyReferenceHandle)scope).Name, Contracts.Main);
}
