namespace FixScore.Testing;

/// <summary>Codes of findings. They stay the same when texts improve.</summary>
public static class ConformanceCodes
{
    /// <summary>The criterion judges neither devices nor parts.</summary>
    public const string JudgesNothing = "judges-nothing";

    /// <summary>Its description is another object at every call.</summary>
    public const string InfoNotSame = "info-not-same";

    /// <summary>The id is no slug.</summary>
    public const string IdNotSlug = "id-not-slug";

    /// <summary>The rule version is below 1.</summary>
    public const string RuleVersion = "rule-version";

    /// <summary>Title, measure, unit, source or the list of what is read is empty.</summary>
    public const string Undescribed = "undescribed";

    /// <summary>It says it reads a member that the record format does not have.</summary>
    public const string ReadsUnknownMember = "reads-unknown-member";

    /// <summary>An option lacks a text, its name is not camelCase, or stands twice.</summary>
    public const string OptionUndocumented = "option-undocumented";

    /// <summary>Default points are not shares from 0 to 1.</summary>
    public const string DefaultOutsideScale = "default-outside-scale";

    /// <summary>It threw, or gave no outcome.</summary>
    public const string Throws = "throws";

    /// <summary>The score leaves the scale.</summary>
    public const string OutsideScale = "outside-scale";

    /// <summary>An answer does not say why.</summary>
    public const string Unexplained = "unexplained";

    /// <summary>A reason's code is no slug, or its text names a fact it does not have.</summary>
    public const string ReasonMalformed = "reason-malformed";

    /// <summary>An unknown answer does not say what is missing.</summary>
    public const string UnknownWithoutMissing = "unknown-without-missing";

    /// <summary>A reason points at something that the record does not have, or says missing what no record can have.</summary>
    public const string PointsNowhere = "points-nowhere";

    /// <summary>The same record gave another answer when asked again.</summary>
    public const string ChangesWhenRepeated = "changes-when-repeated";

    /// <summary>The same record gave another answer under another culture.</summary>
    public const string ChangesWithCulture = "changes-with-culture";

    /// <summary>The same record gave another answer on another thread.</summary>
    public const string ChangesWithThread = "changes-with-thread";

    /// <summary>Knowing less made the score narrower.</summary>
    public const string Narrows = "narrows";

    /// <summary>The better of two records got less.</summary>
    public const string NotMonotone = "not-monotone";

    /// <summary>A suggested change has no slug of its own for an id, or its patch does not apply.</summary>
    public const string AdviceMalformed = "advice-malformed";

    /// <summary>A suggested change makes the record wrong.</summary>
    public const string AdviceInvalid = "advice-invalid";

    /// <summary>A suggested change lowers the criterion's own score.</summary>
    public const string AdviceLowers = "advice-lowers";

    /// <summary>No sample made it give a score, so that the other laws were hardly tried: add samples.</summary>
    public const string NeverScored = "never-scored";
}
