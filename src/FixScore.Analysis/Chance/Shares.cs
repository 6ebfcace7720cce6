using System.Runtime.ExceptionServices;

namespace FixScore.Analysis.Chance;

/// <summary>Splits numbered work over threads, each with a state of its own. Who does what varies: states must merge to the same in any order.</summary>
static class Shares
{
    /// <summary>Runs the work and gives back the states of all threads.</summary>
    /// <param name="pieces">How many pieces there are.</param>
    /// <param name="threads">Threads at most; <c>null</c> for the machine's.</param>
    /// <param name="start">Makes a state.</param>
    /// <param name="work">Does one piece.</param>
    public static TState[] Run<TState>(long pieces, int? threads, Func<TState> start, Action<TState, long> work)
    {
        var states = new TState[(int)Math.Min(pieces, threads ?? Environment.ProcessorCount)];
        var next = -1L;
        void Thread(int thread)
        {
            var state = states[thread] = start();
            for (var piece = Interlocked.Increment(ref next); piece < pieces; piece = Interlocked.Increment(ref next)) work(state, piece);
        }
        if (states.Length == 1) Thread(0);
        else Together(states.Length, Thread);
        return states;
    }

    // What goes wrong in the work is thrown as it is, whether on one thread or on several.
    static void Together(int threads, Action<int> thread)
    {
        try
        {
            Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, thread);
        }
        catch (AggregateException all)
        {
            ExceptionDispatchInfo.Throw(all.InnerExceptions[0]);
        }
    }
}
