using FixScore.Lines;

namespace FixScore;

/// <summary>Scores records that come as lines of JSON (NDJSON), a stream in and results out, in bounded memory.</summary>
/// <remarks>
/// Results come in the order of the lines whatever the number of cores. A line that cannot be scored becomes problems, and
/// the rest goes on. Batches are bounded in lines and bytes; the enumeration reads ahead by one batch at most.
/// </remarks>
public static class RecordLines
{
    const int MostLines = 256;
    const int MostBytes = 4 << 20;

    /// <summary>Scores each line of a stream.</summary>
    /// <param name="input">Records in UTF-8, one a line; blank lines are passed over. Not closed.</param>
    /// <param name="profile">The rules.</param>
    /// <param name="select">Makes what is wanted of a line; runs on several threads at once.</param>
    /// <param name="catalogue">Whose record checks run; <c>null</c> for none.</param>
    /// <param name="mode">What a failing criterion does to its line.</param>
    /// <param name="threads">The most lines judged at once; as many as there are cores when 0.</param>
    /// <param name="cancellation">Cancels the run.</param>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    /// <exception cref="PluginTimeoutException">A plugin did not return in time: the rest does not go on.</exception>
    public static IEnumerable<T> Score<T>(
        Stream input, Profile profile, Func<ScoredLine, T> select, Catalogue? catalogue = null,
        ScoringMode mode = ScoringMode.Strict, int threads = 0, CancellationToken cancellation = default)
    {
        var (reader, judge) = (new LineReader(input), new LineJudge(profile, catalogue, mode, cancellation));
        var parallel = new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = threads > 0 ? threads : -1 };
        while (Batch(reader) is { Count: > 0 } batch)
        {
            var results = new T[batch.Count];
            All(batch.Count, parallel, i => results[i] = select(judge.Score(batch[i])));
            foreach (var result in results) yield return result;
        }
    }

    static void All(int count, ParallelOptions parallel, Action<int> each)
    {
        try
        {
            Parallel.For(0, count, parallel, each);
        }
        catch (AggregateException failure) when (failure.InnerExceptions.OfType<PluginTimeoutException>().FirstOrDefault() is { } late)
        {
            // By its name, not as one of several: whoever called waits for it.
            throw new PluginTimeoutException(late.Plugin, late.What, late.Limit);
        }
    }

    static List<TextLine> Batch(LineReader reader)
    {
        var (batch, bytes) = (new List<TextLine>(), 0);
        while (batch.Count < MostLines && bytes < MostBytes && reader.Next() is { } line)
        {
            batch.Add(line);
            bytes += line.Text.Length;
        }
        return batch;
    }
}
