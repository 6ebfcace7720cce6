namespace FixScore.Cli.Terminal;

/// <summary>Standard input as bytes.</summary>
static class StandardInput
{
    // O_CLOEXEC as proc(5) shows it in fdinfo, in octal digits.
    const int ClosedOnExec = 0x80000;

    /// <summary>What comes in; nothing, as from an empty file, where the program was started with its input closed.</summary>
    public static Stream Open() => WasClosed() ? Stream.Null : Console.OpenStandardInput();

    // Whoever closes it leaves its number to the next file that the runtime opens, from which reading waits for ever. Such a file
    // is closed on exec; one that came through an exec cannot be.
    static bool WasClosed()
    {
        const string facts = "/proc/self/fdinfo/0";
        if (!OperatingSystem.IsLinux() || !File.Exists(facts)) return false;
        var flags = File.ReadLines(facts).FirstOrDefault(line => line.StartsWith("flags:", StringComparison.Ordinal));
        return flags is not null && (Convert.ToInt32(flags["flags:".Length..].Trim(), fromBase: 8) & ClosedOnExec) != 0;
    }
}
