using System.Collections.Immutable;

namespace FixScore.Testing;

/// <summary>What an assessor may have noted of a value: exact, roughly, or not at all.</summary>
static class Observed
{
    /// <summary>A number in tenths: one in five unknown, one in five a range, of which one in four lacks its upper end.</summary>
    public static Quantity? Number(this Dice dice, int least, int most) => dice.Chance(20) ? null : dice.Certain(least, most);

    /// <summary>A number in tenths, exact or a range.</summary>
    public static Quantity Certain(this Dice dice, int least, int most)
    {
        var low = dice.Between(least * 10, most * 10);
        if (dice.Chance(80)) return low / 10m;
        return new(low / 10m, dice.Chance(25) ? null : dice.Between(low, most * 10) / 10m);
    }

    /// <summary>A whole number, exact or a range.</summary>
    public static Quantity Whole(this Dice dice, int least, int most)
    {
        var low = dice.Between(least, most);
        if (dice.Chance(80)) return low;
        return new(low, dice.Chance(25) ? null : dice.Between(low, most));
    }

    /// <summary>A word of a list: one in five unknown, one in seven one of two or three.</summary>
    public static OneOf<T> Word<T>(this Dice dice) where T : struct, Enum =>
        dice.Chance(20) ? default : dice.CertainWord<T>();

    /// <summary>A word of a list, or one of two or three.</summary>
    public static OneOf<T> CertainWord<T>(this Dice dice) where T : struct, Enum
    {
        var words = dice.Shuffled<T>([.. Enum.GetValues<T>()]);
        return new(words[..(dice.Chance(18) ? Math.Min(words.Length, dice.Between(2, 3)) : 1)]);
    }

    /// <summary>Yes, no, or not noted.</summary>
    public static bool? Flag(this Dice dice) => dice.Chance(30) ? null : dice.Chance(50);

    /// <summary>One word of a list.</summary>
    public static T Exactly<T>(this Dice dice) where T : struct, Enum => dice.Pick<T>([.. Enum.GetValues<T>()]);
}
