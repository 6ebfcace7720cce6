namespace FixScore.Fuzz.Findings;

/// <summary>Something that must not be, said in a sentence.</summary>
sealed class FaultException(string what) : Exception(what)
{
    public static void Unless(bool holds, string what)
    {
        if (!holds) throw new FaultException(what);
    }
}
