using FixScore.Cli.Files;

namespace FixScore.Cli.Terminal;

/// <summary>Turns what can go wrong into a sentence and an exit code.</summary>
static class Failures
{
    public static int Guard(Streams streams, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Interrupted;
        }
        catch (InputException failure)
        {
            return Say(streams, ExitCode.InvalidInput, $"{failure.Name} {failure.Code} {failure.Message}", failure.Hint);
        }
        catch (CriterionFaultException failure)
        {
            return Say(streams, ExitCode.PluginFailed,
                [.. failure.Faults.Select(fault => $"The criterion {fault.Criterion} of {fault.Plugin} failed at {fault.Node} ({fault.Code}: {string.Join(", ", fault.Values.Select(value => value.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)))})."),
                 "No score was made. --tolerant counts it as the whole scale and names it in the result."]);
        }
        catch (PluginFileException failure)
        {
            return Say(streams, ExitCode.PluginFailed, failure.Message);
        }
        catch (OutputException failure)
        {
            return Say(streams, ExitCode.OutputFailed, failure.Message);
        }
        catch (IOException failure)
        {
            return Say(streams, ExitCode.OutputFailed, $"Output cannot be written: {failure.Message}");
        }
        catch (Exception failure) when (Environment.GetEnvironmentVariable("FIXSCORE_DEBUG") is null or "")
        {
            return Say(streams, ExitCode.Bug, $"This is a bug in fixscore ({failure.GetType().Name}). Set FIXSCORE_DEBUG=1 and run it again to see where.");
        }
    }

    static int Say(Streams streams, int code, params string[] lines)
    {
        foreach (var line in lines) streams.Error.WriteLine(Plain.Text(line, 1000));
        return code;
    }
}
