using System.CommandLine;
using System.Globalization;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;
using FixScore.Cli.Terminal;
using FixScore.Reporting;

namespace FixScore.Cli;

/// <summary>One run of one command: what was asked, what is installed, where text goes.</summary>
sealed class CommandSession
{
    readonly Lazy<Installation> installation;
    readonly Streams streams;

    public CommandSession(ParseResult parsed, CommonOptions common, Streams streams, CancellationToken cancellation)
    {
        (Parsed, this.streams, Cancellation) = (parsed, streams, cancellation);
        AsJson = parsed.GetValue(common.Json);
        Culture = parsed.GetValue(common.Culture) is { Length: > 0 } name ? CultureInfo.GetCultureInfo(name) : CultureInfo.InvariantCulture;
        installation = new(() => Installation.Of(parsed.GetValue(common.Profiles) ?? [], parsed.GetValue(common.Plugins) ?? []));
        Shown = new(Culture);
        Problems = new(streams);
    }

    public ParseResult Parsed { get; }

    public bool AsJson { get; }

    public CultureInfo Culture { get; }

    public Shown Shown { get; }

    public CancellationToken Cancellation { get; }

    public ProblemPrinter Problems { get; }

    public Catalogue Catalogue => installation.Value.Catalogue;

    public ProfileLibrary Library => installation.Value.Library;

    public TextWriter Out => streams.Out;

    public TextWriter Error => streams.Error;

    public bool ErrorIsTerminal => streams.ErrorIsTerminal;

    public Canvas Canvas => new(streams);

    public Input Read(string path) => Input.Read(path, streams.In);

    /// <summary>Writes bytes to a file as a whole, or to standard output when there is none.</summary>
    public void Write(string? path, byte[] bytes)
    {
        if (path is not null) OutputFile.Write(path, bytes);
        else streams.WriteBytes(bytes);
    }

    /// <summary>Reads a record; prints its problems; <c>null</c> when it cannot be used.</summary>
    public RecordDocument? ReadRecord(string path)
    {
        var input = Read(path);
        var result = RecordFile.Read(input.Bytes, Catalogue);
        Problems.Print(input.Name, result.Problems);
        return result.Value;
    }

    /// <summary>Finds or reads a profile; prints its problems; <c>null</c> when it cannot be used.</summary>
    public Profile? ReadProfile(string nameOrFile)
    {
        var input = Library.Find(nameOrFile) is { } entry ? new Input(entry.From, entry.Text) : ProfileInput(nameOrFile);
        var result = ProfileFile.Read(input.Bytes, Catalogue, Library);
        Problems.Print(input.Name, result.Problems);
        return result.Value;
    }

    Input ProfileInput(string nameOrFile)
    {
        if (nameOrFile == "-" || File.Exists(nameOrFile) || nameOrFile.Contains('/', StringComparison.Ordinal) || nameOrFile.EndsWith(".json", StringComparison.Ordinal))
            return Read(nameOrFile);
        var known = Library.Entries.Select(entry => entry.Id).Distinct().ToArray();
        var near = Suggestions.Nearest(nameOrFile, known);
        throw new InputException(nameOrFile, "profile-unknown", $"there is no profile '{nameOrFile}', and no file of that name",
            near is not null ? $"Did you mean '{near}'?" : $"Known: {string.Join(", ", known)}.");
    }
}
