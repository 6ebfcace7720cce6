namespace FixScore.Analysis.Comparing;

/// <summary>How the values of a unit become its place.</summary>
public enum OrderRule
{
    /// <summary>Weighted arithmetic mean: any criterion makes up for any other.</summary>
    Arithmetic,

    /// <summary>Weighted geometric mean: weak criteria weigh more; values of 0 or more.</summary>
    Geometric,

    /// <summary>Weighted harmonic mean: weak criteria weigh still more; values of 0 or more.</summary>
    Harmonic,

    /// <summary>The weakest criterion alone.</summary>
    Minimum,

    /// <summary>Points by Borda's rule: only the order on each criterion counts; exact values.</summary>
    Borda,

    /// <summary>Points by Copeland's rule: units beaten less units lost to, criteria voting by weight; exact values.</summary>
    Copeland,
}
