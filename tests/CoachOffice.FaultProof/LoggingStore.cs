using System.Buffers;
using System.Text;
using MimeKit;
using SmtpServer;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace CoachOffice.FaultProof;

/// <summary>Takes mail by writing its Message-ID as a line of a file, flushed to the disk before anything is answered.</summary>
internal sealed class LoggingStore(string log) : MessageStore
{
    private readonly FileStream _file = new(log, FileMode.Append, FileAccess.Write, FileShare.Read);
    private readonly Lock _one = new();
    private volatile ServerMode _mode;
    private int _busy;
    private long _pauseTicks;

    public ServerMode Mode
    {
        get => _mode;
        set => _mode = value;
    }

    /// <summary>Taken half before the log is written and half between the log and the answer.</summary>
    public TimeSpan Pause
    {
        get => TimeSpan.FromTicks(Interlocked.Read(ref _pauseTicks));
        set => Interlocked.Exchange(ref _pauseTicks, value.Ticks);
    }

    /// <summary>Waits until nothing is being taken.</summary>
    public async Task Drained()
    {
        while (Volatile.Read(ref _busy) > 0) await Task.Delay(TimeSpan.FromMilliseconds(2));
    }

    public override async Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
    {
        Interlocked.Increment(ref _busy);
        try
        {
            return await Answer(context, buffer, cancellationToken);
        }
        finally
        {
            Interlocked.Decrement(ref _busy);
        }
    }

    /// <summary>Not by disposing: the library disposes of a store after every message.</summary>
    public void Close() => _file.Dispose();

    private async Task<SmtpResponse> Answer(ISessionContext context, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
    {
        switch (Mode)
        {
            case ServerMode.Later:
                return new SmtpResponse(SmtpReplyCode.Aborted, "try again");
            case ServerMode.Never:
                return new SmtpResponse(SmtpReplyCode.TransactionFailed, "no");
            case ServerMode.Hang:
                // Not counted as taking: it never ends by itself.
                Interlocked.Decrement(ref _busy);
                await Task.Delay(Timeout.InfiniteTimeSpan, cancellationToken).ContinueWith(static _ => { }, TaskScheduler.Default);
                Interlocked.Increment(ref _busy);
                return SmtpResponse.TransactionFailed;
            case ServerMode.Forget:
                return SmtpResponse.Ok;
            case ServerMode.DropAfterData:
                return Cut(context);
            default:
                if (Pause > TimeSpan.Zero) await Task.Delay(Pause / 2, CancellationToken.None);
                Write(buffer);
                if (Pause > TimeSpan.Zero) await Task.Delay(Pause / 2, CancellationToken.None);
                return Mode == ServerMode.DropReply ? Cut(context) : SmtpResponse.Ok;
        }
    }

    private static SmtpResponse Cut(ISessionContext context)
    {
        context.Pipe.Dispose();
        return SmtpResponse.Ok;
    }

    private void Write(ReadOnlySequence<byte> buffer)
    {
        using var stream = new MemoryStream(buffer.ToArray());
        var line = Encoding.ASCII.GetBytes(HeaderList.Load(stream)[HeaderId.MessageId] + "\n");
        lock (_one)
        {
            _file.Write(line);
            _file.Flush(flushToDisk: true);
        }
    }
}
