using System.Collections.Immutable;
using System.Reflection;
using System.Reflection.Emit;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace FixScore.Architecture.Tests;

/// <summary>One thing that a method uses.</summary>
/// <param name="By">The outermost type of the method, with its namespace.</param>
/// <param name="What">A member as <c>Namespace.Type.Member</c>, or <c>floating point</c>.</param>
readonly record struct Use(string By, string What);

/// <summary>Reads from compiled code which members of other assemblies it uses, and whether it reckons with binary floating point.</summary>
static class CodeReader
{
    static readonly Dictionary<int, OpCode> Codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(field => (OpCode)field.GetValue(null)!).ToDictionary(code => code.Value & 0xFFFF);

    public static ImmutableSortedSet<string> Uses(string path, Func<Use, bool> wanted)
    {
        using var file = new PEReader(File.OpenRead(path));
        var metadata = file.GetMetadataReader();
        return [.. metadata.MethodDefinitions.SelectMany(handle => UsesOf(file, metadata, metadata.GetMethodDefinition(handle))).Where(wanted).Select(use => $"{use.By} uses {use.What}")];
    }

    static IEnumerable<Use> UsesOf(PEReader file, MetadataReader metadata, MethodDefinition method)
    {
        if (method.RelativeVirtualAddress == 0) return [];
        var (by, uses) = (Outermost(metadata, method.GetDeclaringType()), new List<Use>());
        var code = file.GetMethodBody(method.RelativeVirtualAddress).GetILReader();
        while (code.RemainingBytes > 0)
        {
            var first = code.ReadByte();
            var operation = Codes[first == 0xFE ? 0xFE00 | code.ReadByte() : first];
            if (operation.Name is { } name && (name.Contains(".r4", StringComparison.Ordinal) || name.Contains(".r8", StringComparison.Ordinal) || name == "conv.r.un"))
                uses.Add(new(by, "floating point"));
            if (operation.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineTok)
            {
                if (NameOf(metadata, MetadataTokens.EntityHandle(code.ReadInt32())) is { } member) uses.Add(new(by, member));
            }
            else Skip(ref code, operation.OperandType);
        }
        return uses;
    }

    static void Skip(ref BlobReader code, OperandType operand)
    {
        var length = LengthOf(ref code, operand);
        code.Offset += length;
    }

    static int LengthOf(ref BlobReader code, OperandType operand) => operand switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 * code.ReadInt32(),
        _ => 4,
    };

    static string? NameOf(MetadataReader metadata, EntityHandle handle) => handle.Kind switch
    {
        HandleKind.MethodSpecification => NameOf(metadata, metadata.GetMethodSpecification((MethodSpecificationHandle)handle).Method),
        HandleKind.MemberReference => NameOf(metadata, metadata.GetMemberReference((MemberReferenceHandle)handle)),
        _ => null,
    };

    static string? NameOf(MetadataReader metadata, MemberReference member) =>
        TypeOf(metadata, member.Parent) is { } type ? $"{type}.{metadata.GetString(member.Name)}" : null;

    static string? TypeOf(MetadataReader metadata, EntityHandle handle) => handle.Kind switch
    {
        HandleKind.TypeReference when metadata.GetTypeReference((TypeReferenceHandle)handle) is var type => $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}",
        HandleKind.TypeSpecification => metadata.GetTypeSpecification((TypeSpecificationHandle)handle).Signature is var signature ? Generic(metadata, signature) : null,
        _ => null,
    };

    // A generic type is written as: 0x15, class or value type, the type itself, its arguments (ECMA-335 II.23.2.14).
    static string? Generic(MetadataReader metadata, BlobHandle signature)
    {
        var blob = metadata.GetBlobReader(signature);
        if (blob.ReadByte() != 0x15) return null;
        blob.ReadByte();
        return TypeOf(metadata, blob.ReadTypeHandle());
    }

    static string Outermost(MetadataReader metadata, TypeDefinitionHandle handle)
    {
        var type = metadata.GetTypeDefinition(handle);
        while (!type.GetDeclaringType().IsNil) type = metadata.GetTypeDefinition(type.GetDeclaringType());
        var space = metadata.GetString(type.Namespace);
        return space.Length == 0 ? metadata.GetString(type.Name) : $"{space}.{metadata.GetString(type.Name)}";
    }
}
