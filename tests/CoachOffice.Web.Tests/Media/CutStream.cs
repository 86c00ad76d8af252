namespace CoachOffice.Web.Tests.Media;

/// <summary>A clip of made-up bytes with the head of an MP4, read from a place on; the connection breaks after so many bytes.</summary>
internal sealed class CutStream(long length, long from, long cutAfter, CancellationTokenSource? line = null) : Stream
{
    private static readonly byte[] Head = [0, 0, 0, 24, (byte)'f', (byte)'t', (byte)'y', (byte)'p', (byte)'i', (byte)'s', (byte)'o', (byte)'m'];
    private readonly long _from = from;
    private long _at = from;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => length - _from;

    public override long Position
    {
        get => _at - _from;
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        if (_at - _from >= cutAfter)
        {
            line?.Cancel();
            throw new IOException("The connection broke.");
        }

        var count = (int)Math.Min(Math.Min(buffer.Length, length - _at), cutAfter - (_at - _from));
        for (var i = 0; i < count; i++) buffer[i] = At(_at + i);
        _at += count;
        return count;
    }

    public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) => ValueTask.FromResult(Read(buffer.Span));

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private static byte At(long place) => place < Head.Length ? Head[place] : (byte)(place * 31 + place / 251);
}
