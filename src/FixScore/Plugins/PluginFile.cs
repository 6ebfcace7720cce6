using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using FixScore.Plugins;

namespace FixScore;

/// <summary>Loads plugin files. A plugin runs with all rights of whoever runs the program.</summary>
/// <remarks>
/// <para>Each file gets a load context of its own: two plugins may bring different versions of one library. Contracts and shared facts
/// (<c>FixScore.Abstractions</c>, <c>FixScore.Disassembly</c>, <c>FixScore.Pairing</c>) and .NET itself are the program's. A plugin is
/// unloaded once nothing refers to its catalogue any more. Its assemblies are loaded from memory and know no location of their own.</para>
/// <para>Contained: what a plugin throws, a score outside the scale, a call that does not return (it ends the run). Not contained by any
/// process: a stack overflow, exhausted memory, a plugin that ends the process or does harm with the rights it has.</para>
/// </remarks>
public static class PluginFile
{
    /// <summary>Adds the plugin of a file: the one its assembly names by <see cref="PluginAttribute{TPlugin}"/>. All of it or nothing.</summary>
    /// <param name="builder">Where to add it. The same build of a plugin twice is harmless.</param>
    /// <param name="request">The file and its pins.</param>
    /// <param name="terms">The terms; <see cref="PluginTerms.Usual"/> when <c>null</c>.</param>
    /// <exception cref="PluginFileException">It cannot be used; carries all problems that can be found without running it, else what running it brought.</exception>
    /// <exception cref="PluginTimeoutException">It did not return while it was made or registered.</exception>
    [RequiresUnreferencedCode("Loads an assembly that the trimmer cannot see.")]
    public static CatalogueBuilder AddFile(this CatalogueBuilder builder, PluginRequest request, PluginTerms? terms = null)
    {
        terms ??= PluginTerms.Usual;
        var files = PluginFiles.Read(request.File, Path.GetFullPath(request.File));
        if (!terms.TrustUnpinned && PluginPins.Check(files, request) is { IsEmpty: false } problems) throw new PluginFileException(request.File, problems);
        try
        {
            Install(builder, files, new PluginCalls(terms));
            return builder;
        }
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            throw new PluginFileException(request.File, [Explain(failure)], failure);
        }
    }

    [RequiresUnreferencedCode("Loads an assembly that the trimmer cannot see.")]
    static void Install(CatalogueBuilder builder, PluginFiles files, PluginCalls calls)
    {
        var name = files.Plugin.Name.Name!;
        var registries = calls.Run(new(name, "being made and registered"), default, () =>
        {
            var assembly = new PluginContext(files).LoadPlugin();
            var identity = CatalogueBuilder.Identify(assembly, files.Plugin.Digest) with { Dependencies = files.Dependencies };
            return assembly.GetCustomAttributes<PluginAttribute>().Select(each => Registry.Of(each.Create(), identity, files.Plugin.File, calls)).ToArray();
        });
        foreach (var registry in registries) builder.Install(registry);
    }

    static Problem Explain(Exception failure) => failure switch
    {
        BadImageFormatException => PluginProblems.WrongPlatform(),
        TargetInvocationException or TypeInitializationException when failure.InnerException is { } inner => Explain(inner),
        TypeLoadException or MissingMemberException or IOException => PluginProblems.TypeMissing(failure.Message),
        IdTakenException => PluginProblems.IdTaken(failure.Message),
        UnusableOfferException => PluginProblems.Unusable(failure.Message),
        _ => PluginProblems.Threw(failure.GetType().Name),
    };
}
