using System.Runtime.ExceptionServices;

namespace FixScore.Plugins;

/// <summary>A thread that does one call at a time. It ends when nobody keeps this object any more.</summary>
sealed class CallThread
{
    readonly Desk desk = new();

    // In the background: a call that never returns does not keep the process.
    public CallThread() => new Thread(desk.Work) { IsBackground = true, Name = "plugin" }.Start();

    ~CallThread() => desk.Close();

    /// <summary>Does a job; false when it is not done in time, and then this thread is lost.</summary>
    public bool Run(ICallJob job, TimeSpan limit) => desk.Hand(job, limit);

    sealed class Desk
    {
        readonly SemaphoreSlim given = new(0), done = new(0);
        ICallJob? job;

        public bool Hand(ICallJob next, TimeSpan limit)
        {
            job = next;
            given.Release();
            return done.Wait(limit);
        }

        public void Close()
        {
            job = null;
            given.Release();
        }

        public void Work()
        {
            while (Next()) done.Release();
        }

        // By itself, so that no finished job stays on the stack while waiting.
        bool Next()
        {
            given.Wait();
            if (job is not { } next) return false;
            job = null;
            next.Do();
            return true;
        }
    }
}

/// <summary>Something to do.</summary>
interface ICallJob
{
    void Do();
}

/// <summary>A call, then what came of it.</summary>
sealed class CallJob<T>(Func<T> work) : ICallJob
{
    ExceptionDispatchInfo? failure;
    T? result;

    /// <summary>Bytes that the call allocated on its thread.</summary>
    public long Allocated { get; private set; }

    public void Do()
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        try
        {
            result = work();
        }
        catch (Exception thrown)
        {
            failure = ExceptionDispatchInfo.Capture(thrown);
        }
        Allocated = GC.GetAllocatedBytesForCurrentThread() - before;
    }

    public T Result(CancellationToken cancellation)
    {
        if (failure?.SourceException is OperationCanceledException && !cancellation.IsCancellationRequested) throw new UnaskedCancellationException(failure.SourceException);
        failure?.Throw();
        return result!;
    }
}
