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
