namespace FixScore.Requirements.PairingLaws;

/// <summary>What trials show of an effect on what is replaced together. The first of several counts.</summary>
enum Shown
{
    /// <summary>The effect is proven.</summary>
    Proven,

    /// <summary>Something is shown, but an exception may allow it: not read, or not clear for what is replaced together.</summary>
    ExceptionOpen,

    /// <summary>It works only after a procedure, or whether there was one is not recorded.</summary>
    AfterProcedure,

    /// <summary>An alert is proven that can be dismissed.</summary>
    Dismissible,

    /// <summary>Neither shown nor ruled out.</summary>
    Unsettled,

    /// <summary>Not tried with the boot lock as delivered.</summary>
    NotTried,

    /// <summary>Shown or not, the law allows it for this part.</summary>
    Excepted,

    /// <summary>Ruled out.</summary>
    Cleared,
}
