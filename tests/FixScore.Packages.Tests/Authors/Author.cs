using System.Collections.Immutable;

namespace FixScore.Packages.Tests.Authors;

/// <summary>Somebody who has the SDK and nothing else: the home and the registry are empty, FixScore comes from the feed, other libraries are those of this machine.</summary>
sealed class Author
{
    readonly DirectoryInfo machine;
    readonly ImmutableArray<(string, string)> variables;

    public Author(DirectoryInfo machine, string feed, (string, string) cache)
    {
        this.machine = machine;
        variables = [cache, ("DOTNET_CLI_HOME", machine.CreateSubdirectory("home").FullName), ("DOTNET_NOLOGO", "true")];
        Folder = NewFolder("work");
        var registry = machine.CreateSubdirectory("registry");
        // Each library from one place: no older build and no other registry can slip in.
        File.WriteAllText(Path.Combine(machine.FullName, "nuget.config"), $"""
            <configuration>
              <packageSources>
                <clear />
                <add key="feed" value="{feed}" />
                <add key="nuget.org" value="{registry.FullName}" />
                <add key="machine" value="{Repository.Packages}" />
              </packageSources>
              <packageSourceMapping>
                <packageSource key="feed"><package pattern="FixScore*" /></packageSource>
                <packageSource key="nuget.org"><package pattern="Acme*" /></packageSource>
                <packageSource key="machine"><package pattern="*" /></packageSource>
              </packageSourceMapping>
            </configuration>
            """);
    }

    /// <summary>Where commands run; <c>cd</c> changes it.</summary>
    public string Folder { get; private set; }

    /// <summary>A new folder of the same machine.</summary>
    public string NewFolder(string name) => machine.CreateSubdirectory(name).FullName;

    /// <summary>Runs a line as it would be typed; without quotes.</summary>
    public Step Do(string line)
    {
        if (line.Split(' ') is not [var command, .. var arguments]) throw new ArgumentException("Nothing to run.", nameof(line));
        if (command == "cd")
        {
            Folder = Path.GetFullPath(arguments[0], Folder);
            return new(line, 0, "", "");
        }
        var (code, output, error) = Repository.Attempt(Folder, variables, command == "fixscore" ? Path.Combine(machine.FullName, "home", ".dotnet", "tools", "fixscore") : command, arguments);
        return new(line, code, output, error);
    }

    /// <summary>The same; fails unless it exits with 0.</summary>
    public string Succeed(string line)
    {
        var step = Do(line);
        Assert.True(step.Code == 0, step.ToString());
        return step.Output;
    }
}

/// <summary>A line that was run, and what came of it.</summary>
sealed record Step(string Line, int Code, string Output, string Error);
