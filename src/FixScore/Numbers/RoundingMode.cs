namespace FixScore;

/// <summary>How a value is rounded for people to read, or where a rule says that the rounded value counts.</summary>
public enum RoundingMode
{
    /// <summary>To the nearest; a tie away from zero: 2.5 becomes 3, -2.5 becomes -3. The usual commercial rounding.</summary>
    HalfUp,

    /// <summary>To the nearest; a tie to the even neighbour: 2.5 becomes 2, 3.5 becomes 4. Free of drift over many values.</summary>
    HalfEven,

    /// <summary>Toward zero: 2.9 becomes 2, -2.9 becomes -2. Digits are cut off.</summary>
    Down,
}
