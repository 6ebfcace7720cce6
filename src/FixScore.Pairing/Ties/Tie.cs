namespace FixScore.Pairing.Ties;

/// <summary>A tie that software may hold between two parts: one works in full only beside the other from the same unit.</summary>
/// <remarks>
/// A trial breaks a tie when its two ends come from different units. Putting in another main board breaks the ties of all
/// parts to it, and none between parts; putting in two parts of one unit breaks the ties of both to the main board, and
/// leaves the tie between them whole; putting in one part breaks its tie to the main board and to every part left behind.
/// </remarks>
/// <param name="Part">Id of the part; of two, the one that stands first in the record.</param>
/// <param name="With">Id of the other part; <c>null</c> for the main board.</param>
public sealed record Tie(string Part, string? With = null)
{
    /// <summary>Whether it is a tie to the main board.</summary>
    public bool IsToBoard => With is null;

    /// <summary>Whether a part is one of its ends; the main board is not asked for by id.</summary>
    public bool Touches(string partId) => Part == partId || With == partId;

    /// <summary>Text such as <c>display + main board</c> or <c>display + reader</c>.</summary>
    public override string ToString() => $"{Part} + {With ?? "main board"}";
}
