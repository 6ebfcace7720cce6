using System.Buffers;

namespace FixScore.Canonical;

/// <summary>A growing buffer on rented memory. Not thread safe; nothing may be used of it after it is disposed.</summary>
internal sealed class PooledBuffer : IBufferWriter<byte>, IDisposable
{
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(4096);
    private int _count;

    /// <summary>What has been written so far.</summary>
    internal ReadOnlySpan<byte> Written => _bytes.AsSpan(0, _count);

    /// <inheritdoc/>
    public void Advance(int count) => _count += count;

    /// <inheritdoc/>
    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Reserve(Math.Max(sizeHint, 1));
        return _bytes.AsMemory(_count);
    }

    /// <inheritdoc/>
    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Reserve(Math.Max(sizeHint, 1));
        return _bytes.AsSpan(_count);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
    }

    private void Reserve(int size)
    {
        if (_bytes.Length - _count >= size) return;
        var larger = ArrayPool<byte>.Shared.Rent(Math.Max(2 * _bytes.Length, _count + size));
        Written.CopyTo(larger);
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = larger;
    }
}
