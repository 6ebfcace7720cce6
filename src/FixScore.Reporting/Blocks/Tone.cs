namespace FixScore.Reporting.Blocks;

/// <summary>How something is said. A tone is never told by colour alone.</summary>
enum Tone
{
    /// <summary>As it is.</summary>
    Plain,

    /// <summary>What a hurried reader should take away.</summary>
    Lead,

    /// <summary>Beside the point, for those who check.</summary>
    Quiet,

    /// <summary>A caution; forms put a word in front.</summary>
    Mind,

    /// <summary>What is not known.</summary>
    Open,
}
