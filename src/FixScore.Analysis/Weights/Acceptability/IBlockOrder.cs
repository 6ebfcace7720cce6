namespace FixScore.Analysis.Weights.Acceptability;

/// <summary>Finds the places of units in all lanes of a block at once. Not thread safe.</summary>
interface IBlockOrder
{
    /// <summary>Fills in the places, from 0, and says which lanes it could not tell: bit by lane, set where units are level or nearly so.</summary>
    /// <param name="scores">A row of lanes for each unit; more is better.</param>
    /// <param name="places">Room for as many places; those of a lane that is not told mean nothing.</param>
    /// <param name="stride">From a unit's place in a lane to the next unit's.</param>
    /// <param name="firsts">Room for the best unit of each lane.</param>
    int Rank(ReadOnlySpan<double> scores, Span<int> places, int stride, Span<int> firsts);
}
