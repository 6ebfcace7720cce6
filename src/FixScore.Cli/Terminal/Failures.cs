using System.Globalization;
using FixScore.Cli.Files;
using FixScore.Cli.Installed;

namespace FixScore.Cli.Terminal;

/// <summary>Turns what can go wrong into a sentence, what to do, and an exit code.</summary>
static class Failures
{
    public static int Guard(Streams streams, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (OperationCanceledException failure) when (failure is not PluginTimeoutException)
        {
            return ExitCode.Interrupted;
        }
        catch (Exception failure) when (Known(failure) is var known && (known.Code != ExitCode.Bug || !IsDebugging))
        {
            return Say(streams, known);
        }
    }

    static bool IsDebugging => Environment.GetEnvironmentVariable("FIXSCORE_DEBUG") is { Length: > 0 };

    static (int Code, string[] What, string Hint) Known(Exception failure) => failure switch
    {
        UsageException => (ExitCode.Usage, [failure.Message], ""),
        InputException input => (ExitCode.InvalidInput, [$"{input.Name} {input.Code} {input.Message}"], input.Hint),
        CriterionFaultException faults => (ExitCode.PluginFailed, [.. faults.Faults.Select(Text)],
            "No score was made. --tolerant counts a failed criterion as the whole scale and names it in the result."),
        RecordCheckException or RequirementFaultException => (ExitCode.PluginFailed, [failure.Message], "Tell whoever wrote the plugin, or leave it out."),
        RefusedPluginsException refused => (ExitCode.PluginFailed, [.. refused.Lines], "Nothing was done. --trust-once loads files that are not pinned, or have changed."),
        PluginTimeoutException => (ExitCode.PluginFailed, [failure.Message], "Nothing was scored. Tell whoever wrote the plugin, leave it out, or give it more --plugin-timeout."),
        OutputException => (ExitCode.OutputFailed, [failure.Message], "Nothing was written in its place."),
        // What standard output gives where it was closed.
        UnauthorizedAccessException { InnerException: IOException closed } => (ExitCode.OutputFailed, [$"Output cannot be written: {closed.Message}"], ""),
        IOException => (ExitCode.OutputFailed, [$"Output cannot be written: {failure.Message}"], ""),
        _ => (ExitCode.Bug, [$"This is a bug in fixscore ({failure.GetType().Name})."], "Set FIXSCORE_DEBUG=1 and run it again to see where."),
    };

    static string Text(ScoreFault fault) =>
        $"The criterion {fault.Criterion} of {fault.Plugin} failed at {fault.Node} ({fault.Code}: {string.Join(", ", fault.Values.Select(value => value.Value.ToString(CultureInfo.InvariantCulture)))}).";

    static int Say(Streams streams, (int Code, string[] What, string Hint) known)
    {
        try
        {
            foreach (var line in known.What) streams.Error.WriteLine(Plain.Text(line, 1000));
            if (known.Hint.Length > 0) streams.Error.WriteLine("  " + known.Hint);
        }
        catch (Exception unheard) when (unheard is IOException or UnauthorizedAccessException)
        {
            // Nobody listens: the exit code has to do.
        }
        return known.Code;
    }
}

/// <summary>A command line that cannot be meant.</summary>
sealed class UsageException(string message) : Exception(message);

/// <summary>A record check of a plugin that threw.</summary>
sealed class RecordCheckException(string file, Exception inner) : Exception($"A record check of a plugin failed on {file} ({inner.GetType().Name}).", inner);
