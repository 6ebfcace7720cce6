namespace FixScore.Records;

/// <summary>What undoing a joint leaves of it, physically; whether a spare brings a new one is judged elsewhere.</summary>
public enum Reuse
{
    /// <summary>It can be undone and done again for the same purpose, repeatedly.</summary>
    Reusable,

    /// <summary>It comes out without harm or residue but cannot be used again.</summary>
    Removable,

    /// <summary>Undoing it harms the product or leaves residue that hinders reassembly.</summary>
    Neither,
}
