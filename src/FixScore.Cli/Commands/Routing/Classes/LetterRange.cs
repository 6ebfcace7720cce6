namespace FixScore.Cli.Commands.Routing.Classes;

/// <summary>A class, or the range it can be; A is best.</summary>
/// <param name="Best">The best it can be.</param>
/// <param name="Worst">The worst it can be; not before <paramref name="Best"/>.</param>
readonly record struct LetterRange(char Best, char Worst)
{
    /// <summary>A class that is certain.</summary>
    public static implicit operator LetterRange(char letter) => new(letter, letter);

    /// <summary>What a word that was observed, or not, leaves open.</summary>
    public static LetterRange Over<T>(IEnumerable<T> possible, Func<T, LetterRange> letters)
    {
        LetterRange[] all = [.. possible.Select(letters)];
        return new(all.Min(each => each.Best), all.Max(each => each.Worst));
    }

    /// <summary>The worst of several; what is not known of one leaves <paramref name="whole"/> open. <c>null</c> when nothing is known of any.</summary>
    public static LetterRange? WorstOf(IEnumerable<LetterRange?> items, LetterRange whole)
    {
        var all = items.ToArray();
        if (all.Length > 0 && all.All(each => each is null)) return null;
        return all.Select(each => each ?? whole).Aggregate((LetterRange)'A', (worst, next) => new(Later(worst.Best, next.Best), Later(worst.Worst, next.Worst)));
    }

    /// <summary>The best of several; <c>null</c> when nothing is known of any.</summary>
    public static LetterRange? BestOf(IEnumerable<LetterRange?> items, LetterRange whole)
    {
        var all = items.ToArray();
        return all.All(each => each is null) ? null : new(all.Min(each => (each ?? whole).Best), all.Min(each => (each ?? whole).Worst));
    }

    /// <summary>Either of two.</summary>
    public LetterRange Or(LetterRange other) => new((char)Math.Min(Best, other.Best), Later(Worst, other.Worst));

    public override string ToString() => Best == Worst ? $"{Best}" : $"{Best}-{Worst}";

    static char Later(char first, char second) => (char)Math.Max(first, second);
}
