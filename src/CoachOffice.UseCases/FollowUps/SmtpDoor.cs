using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using MimeKit;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Hands mail to an SMTP server, one connection a message.</summary>
/// <remarks>The only place that catches what a mail server may do: each failure becomes a code, and whether the message may have gone out is kept apart from the rest.</remarks>
internal sealed class SmtpDoor(MailSettings settings) : IMailDoor
{
    public async Task<Handover> HandOver(MimeMessage mail, CancellationToken cancellationToken)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        limit.CancelAfter(TimeSpan.FromSeconds(settings.TimeoutSeconds));
        var progress = new Progress();
        using var client = new SmtpClient();
        client.Timeout = settings.TimeoutSeconds * 1000;
        try
        {
            await Send(client, mail, progress, limit.Token);
            return Handover.Taken;
        }
        catch (SmtpCommandException refusal)
        {
            return OfReply(refusal);
        }
        catch (Exception failure) when (failure is AuthenticationException or SslHandshakeException or SocketException or IOException or ProtocolException
                                            or OperationCanceledException or TimeoutException or NotSupportedException)
        {
            return progress.Began ? new Handover(HandoverResult.Unknown, "sent-unknown") : new Handover(HandoverResult.TryLater, CodeOf(failure));
        }
    }

    private async Task Send(SmtpClient client, MimeMessage mail, Progress progress, CancellationToken cancellationToken)
    {
        var security = settings.AllowPlain ? SecureSocketOptions.StartTlsWhenAvailable : settings.Port == 465 ? SecureSocketOptions.SslOnConnect : SecureSocketOptions.StartTls;
        await client.ConnectAsync(settings.Host, settings.Port, security, cancellationToken);
        if (settings.User.Length > 0) await client.AuthenticateAsync(settings.User, settings.Password, cancellationToken);
        await client.SendAsync(mail, cancellationToken, progress);
        await Leave(client, cancellationToken);
    }

    // The message is taken; a server that falters over the good-bye changes nothing about that.
    private static async Task Leave(SmtpClient client, CancellationToken cancellationToken)
    {
        try
        {
            await client.DisconnectAsync(quit: true, cancellationToken);
        }
        catch (Exception falter) when (falter is IOException or SocketException or ProtocolException or CommandException or OperationCanceledException)
        {
            client.Timeout = 1;
        }
    }

    private static Handover OfReply(SmtpCommandException refusal)
    {
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
