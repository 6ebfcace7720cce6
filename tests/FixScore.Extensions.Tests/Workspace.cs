using System.Text.Json;
using Microsoft.Extensions.Configuration;

namespace FixScore.Extensions.Tests;

/// <summary>A folder with settings, profiles and plugin files, gone after the test.</summary>
sealed class Workspace : IDisposable
{
    public const string Plugin = "FixScore.Criteria.Documentation.dll";

    public string Folder { get; } = Directory.CreateTempSubdirectory("fixscore-settings-").FullName;

    public static string PluginFile { get; } = Path.Combine(AppContext.BaseDirectory, Plugin);

    /// <summary>Terms that load files without pins.</summary>
    public static PluginTerms Trusting { get; } = new() { TrustUnpinned = true };

    public static string Record { get; } = Path.Combine(AppContext.BaseDirectory, "record.json");

    public string Write(string path, string text)
    {
        var full = Path.Combine(Folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
        return full;
    }

    /// <summary>A profile of one leaf in the folder <c>rules</c>.</summary>
    public Workspace WithProfile(string id, string criterion = "documentation", string version = "1.0.0")
    {
        Write($"rules/{id}-{version}.json", $$"""
            {
              "format": "fixscore-profile/1", "id": "{{id}}", "version": "{{version}}", "title": "A test", "status": "own",
              "source": { "title": "A test", "locator": "none", "date": "2026-01-01" },
              "scale": { "min": 0, "max": 10, "decimals": 1, "rounding": "half-up" },
              "root": { "id": "total", "criterion": "{{criterion}}" }
            }
            """);
        return this;
    }

    public static IConfiguration Settings(string section) => new ConfigurationBuilder()
        .AddJsonStream(new MemoryStream(JsonSerializer.SerializeToUtf8Bytes(new Dictionary<string, JsonElement> { ["FixScore"] = JsonDocument.Parse(section).RootElement })))
        .Build();

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
