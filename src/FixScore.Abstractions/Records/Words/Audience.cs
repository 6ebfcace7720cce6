namespace FixScore.Records;

/// <summary>Who can get something, widest first.</summary>
public enum Audience
{
    /// <summary>Everyone.</summary>
    Public,

    /// <summary>Independent professional repairers.</summary>
    Repairers,

    /// <summary>The maker's own network.</summary>
    Authorised,

    /// <summary>Nobody: it was looked for and does not exist.</summary>
    Nobody,
}
