using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Hands mail to an SMTP server over one connection, one message at a time.</summary>
/// <remarks>The only place that catches what a mail server may do: each failure becomes a code, and whether the message may have gone out is kept apart from the rest.</remarks>
internal sealed class SmtpDoor(MailSettings settings, TimeProvider time) : IMailDoor, IDisposable
{
    private static readonly TimeSpan GoodBye = TimeSpan.FromSeconds(2);

    private readonly SemaphoreSlim _one = new(1, 1);
    private readonly SmtpLine _line = new(settings);
    private readonly MailRate _rate = new(settings.PerMinute, time);

    public async Task<Handover> HandOver(MimeMessage mail, CancellationToken cancellationToken)
    {
        await _one.WaitAsync(CancellationToken.None);
        try
        {
            if (!_rate.Take()) return new Handover(HandoverResult.NotNow, "mail-rate");

            // A server may end a connection between two messages as it likes; on a new one nothing excuses it.
            var wasOpen = _line.IsOpen;
            var handover = await Try(mail, cancellationToken);
            return wasOpen && !_line.IsOpen && handover.Result == HandoverResult.TryLater ? await Try(mail, cancellationToken) : handover;
        }
        finally
        {
            _one.Release();
        }
    }

    public async Task Rest()
    {
        await _one.WaitAsync();
        using var limit = new CancellationTokenSource(GoodBye);
        try
        {
            await _line.Close(limit.Token);
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose()
    {
        _line.Dispose();
        _one.Dispose();
    }

    private async Task<Handover> Try(MimeMessage mail, CancellationToken cancellationToken)
    {
        var progress = new Progress();
        try
        {
            await Send(mail, progress, cancellationToken);
            return Handover.Taken;
        }
        catch (SmtpCommandException refusal)
        {
            return OfReply(refusal);
        }
        catch (Exception failure) when (failure is AuthenticationException or SslHandshakeException or SocketException or IOException or ProtocolException
                                            or OperationCanceledException or TimeoutException or NotSupportedException or ServiceNotConnectedException)
        {
            _line.Drop();
            return progress.Began ? new Handover(HandoverResult.Unknown, Problems.SentUnknown) : new Handover(HandoverResult.TryLater, CodeOf(failure));
        }
    }

    // The program's end breaks off connecting, never a message on its way: that would leave open whether it arrived. The time limit holds for both.
    private async Task Send(MimeMessage mail, Progress progress, CancellationToken cancellationToken)
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(settings.TimeoutSeconds));
        using var connecting = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken, limit.Token);
        var client = await _line.Open(connecting.Token);
        var sender = settings.ReturnPath.Length > 0 ? new MailboxAddress("", settings.ReturnPath) : mail.From.Mailboxes.First();
        await client.SendAsync(mail, sender, mail.To.Mailboxes, limit.Token, progress);
    }

    private Handover OfReply(SmtpCommandException refusal)
    {
        // 421: the server is about to end this connection (RFC 5321 section 3.8), whatever was asked of it.
        if (refusal.StatusCode == SmtpStatusCode.ServiceNotAvailable) _line.Drop();
        var forGood = (int)refusal.StatusCode >= 500;
        var code = refusal.ErrorCode switch
        {
            SmtpErrorCode.RecipientNotAccepted => "recipient-refused",
            SmtpErrorCode.SenderNotAccepted => "sender-refused",
            _ => "message-refused",
        };
        return new Handover(forGood ? HandoverResult.Refused : HandoverResult.TryLater, code);
    }

    private static string CodeOf(Exception failure) => failure switch
    {
        AuthenticationException => "mail-server-sign-in",
        SslHandshakeException or NotSupportedException => "mail-server-encryption",
        OperationCanceledException or TimeoutException => "mail-server-silent",
        _ => "mail-server-down",
    };

    private sealed class Progress : ITransferProgress
    {
        /// <summary>Some of the message itself went over the wire.</summary>
        public bool Began { get; private set; }

        public void Report(long bytesTransferred, long totalSize) => Began = true;

        public void Report(long bytesTransferred) => Began = true;
    }
}
