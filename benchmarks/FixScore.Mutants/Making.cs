using System.Diagnostics;

namespace FixScore.Mutants;

/// <summary>Lets dotnet-stryker make the assembly with all mutants of a room, and stops it from trying them.</summary>
/// <remarks>
/// A project with a single test that reaches next to nothing stands in for the tests. The assembly lies in its folder only while
/// dotnet-stryker works, so it is copied as soon as it is there.
/// </remarks>
sealed class Making(Room room, string root, string folder)
{
    const string Marker = "MutantControl";

    readonly string dry = Path.Combine(root, "tests", "Dry.Tests");

    public string Report => Path.Combine(folder, "report.json");

    public string Assembly => Path.Combine(folder, $"{room.Project}.dll");

    public void Run()
    {
        if (File.Exists(Report) && File.Exists(Assembly)) return;
        Directory.CreateDirectory(folder);
        Lay();
        try
        {
            Shell.Run(root, "tool", "restore");
            using (var grabbing = new CancellationTokenSource())
            {
                var grab = Task.Run(() => Grab(grabbing.Token));
                Shell.Run(dry, "stryker", "--output", Path.Combine(folder, "stryker"));
                grabbing.Cancel();
                grab.Wait();
            }
            File.Copy(Path.Combine(folder, "stryker", "reports", "mutation-report.json"), Report, overwrite: true);
        }
        finally
        {
            Directory.Delete(dry, recursive: true);
        }
    }

    void Lay()
    {
        Directory.CreateDirectory(dry);
        File.WriteAllText(Path.Combine(dry, "Dry.Tests.csproj"), $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <ItemGroup>
                <ProjectReference Include="../../src/{room.Project}/{room.Project}.csproj" />
              </ItemGroup>
            </Project>
            """);
        File.WriteAllText(Path.Combine(dry, "DryTests.cs"), $$"""
            namespace Dry.Tests;

            public sealed class DryTests
            {
                [Fact]
                public void Next_to_nothing_is_reached() => Assert.NotNull((object?){{room.Touch}});
            }
            """);
        File.WriteAllText(Path.Combine(dry, "stryker-config.json"), $$"""{ "stryker-config": { "project": "{{room.Project}}.csproj", "reporters": ["json"], "concurrency": 1 } }""");
    }

    void Grab(CancellationToken ended)
    {
        var made = Path.Combine(dry, "bin", "Debug", "net10.0", $"{room.Project}.dll");
        while (!ended.WaitHandle.WaitOne(TimeSpan.FromSeconds(1)))
        {
            if (!File.Exists(made)) continue;
            var bytes = Read(made);
            if (bytes.AsSpan().IndexOf(System.Text.Encoding.UTF8.GetBytes(Marker)) >= 0) File.WriteAllBytes(Assembly, bytes);
        }
    }

    static byte[] Read(string file)
    {
        try
        {
            return File.ReadAllBytes(file);
        }
        catch (IOException) // It is being written.
        {
            return [];
        }
    }
}
