using FixScore.Disassembly;

namespace FixScore.Reporting.Sheet;

/// <summary>In words, whether what was undone can be used again.</summary>
static class RenewalWording
{
    public static string Says(SheetRenewal renewal) => !renewal.IsRecorded ? "not recorded whether it can be used again"
        : string.Join(", or ", renewal.Levels.Select(Says));

    static string Says(FastenerLevel level) => level switch
    {
        FastenerLevel.Reusable => "can be used again",
        FastenerLevel.Resupplied => "renew: a new one comes with the spare part",
        FastenerLevel.Removable => "renew: a new one has to be bought",
        _ => "cannot be restored as it was",
    };
}
