using System.Reflection;
using System.Runtime.Loader;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace FixScore.Mutants.Trying;

/// <summary>The tests of an assembly, loaded once and run as often as wanted.</summary>
sealed class LoadedTests
{
    readonly ITestFrameworkExecutor executor;

    LoadedTests(Assembly assembly, IReadOnlyList<ITestCase> all, ITestFrameworkExecutor executor)
    {
        All = all;
        this.executor = executor;
        Assembly = assembly;
    }

    public Assembly Assembly { get; }

    /// <summary>Every test, by name.</summary>
    public IReadOnlyList<ITestCase> All { get; }

    public static LoadedTests From(string file)
    {
        var folder = Path.GetDirectoryName(file)!;
        AppContext.SetData("APP_CONTEXT_BASE_DIRECTORY", folder + Path.DirectorySeparatorChar); // Tests look for files beside themselves.
        Environment.CurrentDirectory = folder;
        var resolver = new AssemblyDependencyResolver(file);
        AssemblyLoadContext.Default.Resolving += (context, name) => resolver.ResolveAssemblyToPath(name) is { } path ? context.LoadFromAssemblyPath(path) : null;
        AssemblyLoadContext.Default.ResolvingUnmanagedDll += (_, name) =>
            resolver.ResolveUnmanagedDllToPath(name) is { } path ? System.Runtime.InteropServices.NativeLibrary.Load(path) : 0;
        var assembly = AssemblyLoadContext.Default.LoadFromAssemblyPath(file);
        var framework = new XunitTestFramework(new Silence());
        var found = new Discovered();
        using (var discoverer = framework.GetDiscoverer(Reflector.Wrap(assembly)))
        {
            discoverer.Find(false, found, new RunOptions());
            found.Ended.Wait();
        }
        return new(assembly, [.. found.Cases.OrderBy(test => test.DisplayName, StringComparer.Ordinal)], framework.GetExecutor(assembly.GetName()));
    }

    /// <summary>Runs some of the tests, one after another, to the first that fails.</summary>
    /// <returns>The name of the test that failed; <c>null</c> when none did.</returns>
    public string? FirstFailed(IEnumerable<ITestCase> tests)
    {
        var outcome = new Outcome();
        executor.RunTests(tests, outcome, new RunOptions());
        outcome.Ended.Wait();
        return outcome.Failed;
    }
}
