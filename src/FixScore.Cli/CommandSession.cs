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
    readonly PluginMeter? meter;
    bool inputIsTaken;

    public CommandSession(ParseResult parsed, CommonOptions common, Streams streams, CancellationToken cancellation)
    {
        (Parsed, this.streams, Cancellation) = (parsed, streams, cancellation);
        AsJson = parsed.GetValue(common.Json);
        Culture = parsed.GetValue(common.Culture)!;
        Shown = new(Culture);
        Problems = new(streams);
        meter = parsed.GetValue(common.Measure) ? new() : null;
        installation = new(() => Installation.Of(parsed.GetValue(common.Profiles) ?? [],
            new NamedPlugins(this, parsed.GetValue(common.Plugins) ?? [], parsed.GetValue(common.Pins) ?? []).All(),
            new() { TrustUnpinned = parsed.GetValue(common.TrustOnce), Limit = TimeSpan.FromSeconds(parsed.GetValue(common.Timeout)), Meter = meter }));
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

    /// <summary>Reads a file, or standard input once.</summary>
    public Input Read(string path)
    {
        Take(path);
        return Input.Read(path, streams.In);
    }

    /// <summary>A file, or standard input once, as a stream.</summary>
    public Stream Open(string path)
    {
        Take(path);
        return Input.Open(path, streams.In);
    }

    void Take(string path)
    {
        Cancellation.ThrowIfCancellationRequested();
        if (path == Input.StandardInput && inputIsTaken) throw new UsageException("Standard input (-) can be read only once.");
        inputIsTaken |= path == Input.StandardInput;
    }

    /// <summary>Writes bytes to a file as a whole, or to standard output when there is none.</summary>
    public void Write(string? path, byte[] bytes)
    {
        if (path is not null) OutputFile.Write(path, bytes);
        else streams.WriteBytes(bytes);
    }

    /// <summary>Reads a record with the checks of what is installed.</summary>
    /// <exception cref="RecordCheckException">A check of a plugin threw.</exception>
    public ReadResult<RecordDocument> CheckRecord(Input input)
    {
        try
        {
            return RecordFile.Read(input.Bytes, Catalogue);
        }
        catch (Exception failure) when (failure is not OperationCanceledException && !Catalogue.Checks.IsEmpty && RecordFile.Read(input.Bytes) is not null)
        {
            throw new RecordCheckException(input.Name, failure);
        }
    }

    /// <summary>Reads a record; prints its problems; <c>null</c> when it cannot be used.</summary>
    public RecordDocument? ReadRecord(string path) => ReadRecordText(path).Document;

    /// <summary>The same, with the text it was read from.</summary>
    public (RecordDocument? Document, Input Input) ReadRecordText(string path)
    {
        var input = Read(path);
        var result = CheckRecord(input);
        Problems.Print(input.Name, result.Problems);
        return (result.Value, input);
    }

    /// <summary>Finds or reads a profile; prints its problems; <c>null</c> when it cannot be used.</summary>
    public Profile? ReadProfile(string nameOrFile) => ReadProfileText(nameOrFile).Profile;

    /// <summary>The same, with the text it was read from.</summary>
    public (Profile? Profile, ReadOnlyMemory<byte> Text) ReadProfileText(string nameOrFile)
    {
        var input = Library.Find(nameOrFile) is { } entry ? new Input(entry.From, entry.Text) : ProfileInput(nameOrFile);
        var result = ProfileFile.Read(input.Bytes, Catalogue, Library);
        Problems.Print(input.Name, result.Problems);
        return (result.Value, input.Bytes);
    }

    /// <summary>Whether a profile is for such a device; prints why when it is not.</summary>
    public bool Fits(string path, RecordDocument document, Profile profile)
    {
        if (ProfileMismatchException.For(document.Record.Device, profile) is not { } mismatch) return true;
        Problems.Print(path, mismatch.Problem);
        return false;
    }

    /// <summary>Says what calls of plugin files came to, when asked to.</summary>
    public void TellMeasures()
    {
        foreach (var each in meter?.Measures ?? [])
            Error.WriteLine(Plain.Text($"{each.Plugin}: {each.What}, calls: {Shown.Number(each.Calls)}, bytes allocated a call: {Shown.Number(each.Bytes / each.Calls)}"));
    }

    Input ProfileInput(string nameOrFile)
    {
        if (nameOrFile == Input.StandardInput || File.Exists(nameOrFile) || nameOrFile.Contains('/', StringComparison.Ordinal) || nameOrFile.EndsWith(".json", StringComparison.Ordinal))
            return Read(nameOrFile);
        var known = Library.Entries.Select(entry => entry.Id).Distinct().ToArray();
        var near = Suggestion.For(nameOrFile, known);
        throw new InputException(nameOrFile, "profile-unknown", $"there is no profile '{nameOrFile}', and no file of that name",
            near is not null ? $"Did you mean '{near}'?" : $"Known: {string.Join(", ", known)}.");
    }
}
