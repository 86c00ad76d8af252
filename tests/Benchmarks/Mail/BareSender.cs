using System.Data.Common;
using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using MailKit.Net.Smtp;
using MailKit.Security;
using Microsoft.EntityFrameworkCore;
using MimeKit;

namespace CoachOffice.Benchmarks.Mail;

/// <summary>A loop by hand, as lean as the libraries allow: no law, no letter, no link; its connection has what the office's has (no delay, no pipelining), its update is one prepared statement over an open connection.</summary>
internal sealed class BareSender(DueOffice office, SmtpClient client, OfficeDb db) : IAsyncDisposable
{
    public static async Task<BareSender> To(DueOffice office)
    {
        var client = new SmtpClient();
        var socket = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        await socket.ConnectAsync(IPAddress.Loopback, office.Port);
        await client.ConnectAsync(socket, "127.0.0.1", office.Port, SecureSocketOptions.None);
        client.Capabilities &= ~SmtpCapabilities.Pipelining;
        var db = new OfficeDb(office.Database.Options());
        await db.Database.OpenConnectionAsync();
        return new BareSender(office, client, db);
    }

    /// <summary>Sends for a while; messages a second.</summary>
    public async Task<double> Send(TimeSpan atMost, int size)
    {
        // From the other end of what is due, so that the two never meet.
        var rows = await db.Messages.AsNoTracking().Where(m => m.State == MessageState.Waiting && m.LeaseUntil == null && m.DueAt < NodaTime.Instant.FromUtc(2026, 3, 20, 0, 0)).OrderByDescending(m => m.Id).Take(8_000).Select(m => m.Id).ToListAsync();
        await using var update = db.Database.GetDbConnection().CreateCommand();
        update.CommandText = "UPDATE \"Messages\" SET \"State\" = 'sent', \"SentAt\" = @at WHERE \"Id\" = @id";
        var (at, id) = (Add(update, "at"), Add(update, "id"));
        (at.Value, id.Value) = (DateTime.UnixEpoch, rows[0]);
        await update.PrepareAsync();
        var text = string.Concat(Enumerable.Repeat("The same words again, as long as a letter of the office is.\n", size / 2 / 60));
        var (began, count) = (Stopwatch.GetTimestamp(), 0);
        while (count < rows.Count && Stopwatch.GetElapsedTime(began) < atMost)
        {
            await client.SendAsync(Mail(rows[count], text));
            (at.Value, id.Value) = (DateTime.UnixEpoch.AddYears(56), rows[count]);
            await update.ExecuteNonQueryAsync();
            count++;
        }

        return count / Stopwatch.GetElapsedTime(began).TotalSeconds;
    }

    public async ValueTask DisposeAsync()
    {
        client.Dispose();
        await db.DisposeAsync();
        GC.KeepAlive(office);
    }

    private static MimeMessage Mail(Guid id, string text)
    {
        var mail = new MimeMessage { Subject = "Long Meadow Lessons: time to read the number again", MessageId = $"bare.{id:N}@long-meadow.example" };
        mail.From.Add(new MailboxAddress("Long Meadow Lessons", "office@long-meadow.example"));
        mail.To.Add(new MailboxAddress("Hester Quill", "hester@example.org"));
        mail.Body = new MultipartAlternative
        {
            new TextPart("plain") { Text = text, ContentTransferEncoding = ContentEncoding.QuotedPrintable },
            new TextPart("html") { Text = text, ContentTransferEncoding = ContentEncoding.QuotedPrintable },
        };
        return mail;
    }

    private static DbParameter Add(DbCommand command, string name)
    {
        var parameter = command.CreateParameter();
        parameter.ParameterName = name;
        command.Parameters.Add(parameter);
        return parameter;
    }
}
