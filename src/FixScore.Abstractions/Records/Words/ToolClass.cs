namespace FixScore.Records;

/// <summary>How a tool can be had, best first.</summary>
public enum ToolClass
{
    /// <summary>On the list of basic tools of Regulation (EU) 2023/1669, Annex I (42).</summary>
    Basic,

    /// <summary>On general sale.</summary>
    Commercial,

    /// <summary>On general sale, made for this trade or product.</summary>
    Specialised,

    /// <summary>Not on general sale.</summary>
    Proprietary,
}
