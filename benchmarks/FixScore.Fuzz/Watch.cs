using System.Diagnostics;
using System.IO.MemoryMappedFiles;

namespace FixScore.Fuzz;

/// <summary>Looks on from outside: the input at hand outlives a process that is torn down, a run that never ends is ended, the most memory is noted.</summary>
sealed class Watch : IDisposable
{
    const int Room = 1 << 20;
    static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    readonly string file;
    readonly MemoryMappedFile memory;
    readonly MemoryMappedViewAccessor view;
    readonly Timer timer;
    long since = Stopwatch.GetTimestamp();
    long peak;

    public Watch(string folder, string target)
    {
        file = Path.Combine(Directory.CreateDirectory(folder).FullName, $"{target}-at-hand-{Environment.ProcessId}.bin");
        memory = MemoryMappedFile.CreateFromFile(file, FileMode.Create, null, Room);
        view = memory.CreateViewAccessor();
        timer = new(_ => Look(), null, 0, 50);
    }

    /// <summary>The most memory the process had, in bytes.</summary>
    public long Peak => Interlocked.Read(ref peak);

    /// <summary>Four bytes of length, then the input.</summary>
    public void AtHand(byte[] input)
    {
        view.Write(0, input.Length);
        view.WriteArray(4, input, 0, Math.Min(input.Length, Room - 4));
        Interlocked.Exchange(ref since, Stopwatch.GetTimestamp());
    }

    public void Dispose()
    {
        timer.Dispose();
        view.Dispose();
        memory.Dispose();
        File.Delete(file);
    }

    void Look()
    {
        Interlocked.Exchange(ref peak, Math.Max(Peak, Environment.WorkingSet));
        if (Stopwatch.GetElapsedTime(Interlocked.Read(ref since)) < Patience) return;
        Console.WriteLine($"FAILED {file}: it does not end.");
        Environment.Exit(1);
    }
}
