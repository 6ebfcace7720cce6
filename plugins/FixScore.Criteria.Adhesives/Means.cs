namespace FixScore.Criteria.Adhesives;

/// <summary>By what a bond is opened, gentlest first; the words of option <c>means</c>.</summary>
enum Means
{
    BareHands,
    StretchRelease,
    Tool,
    Solvent,
    Heat,
    Damage,
}

/// <summary>What a measured force counts for; the words of option <c>force</c>.</summary>
enum ForceUse
{
    /// <summary>It is said as a reason, the means decide.</summary>
    Reported,

    /// <summary>It decides instead of the means.</summary>
    Decides,
}
