using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;

namespace FixScore.Architecture.Tests;

/// <summary>What others see is closed where it is not meant to be extended, and explained.</summary>
public sealed class Public_types_tests
{
    const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static TheoryData<string> Rooms => [.. House.Rooms];

    public static TheoryData<string> Libraries => [.. House.Rooms.Where(room => room != "FixScore.Cli")];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_public_class_is_sealed_static_or_abstract(string room) =>
        Assert.DoesNotContain(House.Load(room).GetExportedTypes(), type => type is { IsClass: true, IsSealed: false, IsAbstract: false });

    [Theory]
    [MemberData(nameof(Libraries))]
    public void Every_public_type_and_member_is_explained(string room)
    {
        var explained = Explained(room);
        var silent = House.Load(room).GetExportedTypes().SelectMany(type => Names(type).Where(name => !explained.Contains(name))).ToArray();
        Assert.Empty(silent);
    }

    [Fact]
    public void The_contracts_have_many_explained_members_so_that_the_check_sees_them() => Assert.True(Explained("FixScore.Abstractions").Count > 300);

    /// <summary>Names of all members that have a text, without parameters: overloads share one.</summary>
    static HashSet<string> Explained(string room) =>
        [.. XDocument.Load(Path.ChangeExtension(House.PathOf(room), ".xml")).Descendants("member")
            .Where(member => member.Elements().Any(text => text.Name == "inheritdoc" || text.Value.Trim().Length > 0))
            .Select(member => member.Attribute("name")!.Value.Split('(')[0])];

    static IEnumerable<string> Names(Type type)
    {
        var name = type.FullName!.Replace('+', '.');
        yield return $"T:{name}";
        foreach (var member in type.GetMembers(Declared).Where(member => !IsMade(type, member)))
            if (Prefix(member) is { } prefix) yield return $"{prefix}:{name}.{member.Name.Replace('.', '#')}{Arity(member)}";
    }

    static char? Prefix(MemberInfo member) => member switch
    {
        FieldInfo { IsSpecialName: false } => 'F',
        PropertyInfo => 'P',
        EventInfo => 'E',
        MethodInfo method when !method.IsSpecialName || method.Name.StartsWith("op_", StringComparison.Ordinal) => 'M',
        _ => null,
    };

    static string Arity(MemberInfo member) => member is MethodInfo { IsGenericMethod: true } method ? $"``{method.GetGenericArguments().Length}" : "";

    // Members that the compiler makes for records and delegates; those from a parameter are explained at the type.
    static bool IsMade(Type type, MemberInfo member) => member.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
        || member is MethodInfo && member.Name is "Deconstruct" or "<Clone>$"
        || typeof(Delegate).IsAssignableFrom(type)
        || member is PropertyInfo property && property.GetMethod?.IsDefined(typeof(CompilerGeneratedAttribute)) == true
            && type.GetConstructors().Any(made => made.GetParameters().Any(parameter => parameter.Name == property.Name));
}
