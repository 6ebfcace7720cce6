using System.Collections.Immutable;
using FixScore.Records;

namespace FixScore.Disassembly.Model;

/// <summary>Walks a recorded sequence and tells where it cannot go on.</summary>
static class SequenceWalk
{
    /// <summary>The operations of a sequence that is possible.</summary>
    public static ImmutableArray<Work> Works(Teardown teardown, Sequence sequence) => [.. Numbers(teardown, sequence).Select(number => teardown.Works[number])];

    /// <summary>The first fault; <c>null</c> when all can be done in turn and the part is free at the end.</summary>
    /// <param name="teardown">The record as work.</param>
    /// <param name="sequence">The sequence.</param>
    /// <param name="strictly">Whether to remove again what is gone is a fault too: it can be done, but in a recorded sequence it is a slip.</param>
    public static SequenceFault? FaultIn(Teardown teardown, Sequence sequence, bool strictly)
    {
        var (done, last) = (new Bits(teardown.Works.Length), -1);
        var numbers = Numbers(teardown, sequence);
        for (var place = 0; place < numbers.Length; place++)
        {
            if (numbers[place] < 0) return new(place, SequenceFaultKind.NotDisassembly, []);
            var work = teardown.Works[numbers[place]];
            if (done.Has(numbers[place])) return new(place, SequenceFaultKind.Twice, []);
            if (teardown.Lacking(work.Needs, done) is { Length: > 0 } lacking) return new(place, SequenceFaultKind.Needs, lacking);
            if (work.DirectlyAfter is { } before && before != last) return new(place, SequenceFaultKind.NotDirectlyAfter, []);
            if (strictly && teardown.RemovesAgain(numbers[place], done)) return new(place, SequenceFaultKind.RemovesAgain, []);
            done.Add(last = numbers[place]);
        }
        var free = teardown.Freed(teardown.Structure.GroupOf(sequence.Part));
        return teardown.Lacking(free, done) is { Length: > 0 } open ? new(numbers.Length, SequenceFaultKind.NotFree, open) : null;
    }

    static int[] Numbers(Teardown teardown, Sequence sequence) => [.. sequence.Operations.Select(teardown.Number)];
}

/// <summary>Why a recorded sequence is impossible.</summary>
/// <param name="Place">The place in the sequence; its length when all was done and the part is not free.</param>
/// <param name="Kind">What is wrong.</param>
/// <param name="Lacking">What does not hold there.</param>
sealed record SequenceFault(int Place, SequenceFaultKind Kind, ImmutableArray<Want> Lacking);

/// <summary>What can be wrong with a recorded sequence.</summary>
enum SequenceFaultKind
{
    NotDisassembly,
    Twice,
    Needs,
    NotDirectlyAfter,
    RemovesAgain,
    NotFree,
}
