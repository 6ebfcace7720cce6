using System.Collections.Immutable;

namespace FixScore.Disassembly.Model;

/// <summary>What must have been done before something can be: operations joined by "and" and "or".</summary>
/// <remarks>
/// Everything a record can ask for (a joint undone, a part away, a milestone) is brought about by operations alone, and
/// never undone again; so a need is a formula over operations without "not". Needs are shared, and compared by identity.
/// </remarks>
abstract class Need
{
    Need() { }

    /// <summary>One of these operations was done.</summary>
    public sealed class Fact(int[] by, Want want) : Need
    {
        /// <summary>Numbers of the operations, rising.</summary>
        public int[] By => by;

        public Want Want => want;
    }

    /// <summary>All of these hold; nothing at all always does.</summary>
    public sealed class All(ImmutableArray<Need> of) : Need
    {
        public ImmutableArray<Need> Of => of;
    }

    /// <summary>One of these holds.</summary>
    public sealed class Any(ImmutableArray<Need> of) : Need
    {
        public ImmutableArray<Need> Of => of;
    }
}

/// <summary>What a fact is about, for the texts that name it.</summary>
/// <param name="Kind">What is asked of it.</param>
/// <param name="Id">Id of the joint, part or operation.</param>
/// <param name="Over">The joint that is reached only then; <c>null</c> when it is no such matter.</param>
readonly record struct Want(WantKind Kind, string Id, string? Over = null);

/// <summary>What can be asked for.</summary>
enum WantKind
{
    Undone,
    Removed,
    Away,
    Done,
}
