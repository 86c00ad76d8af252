using System.Data.Common;
using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Watching;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using NodaTime;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>What came of backups, the latest of them.</summary>
public sealed partial class BackupRecords(OfficeDb db, AuditTrail trail, INewIds ids, OfficeMeter meter, ILogger<BackupRecords> log)
{
    private const int Kept = 60;

    internal Task<bool> HasProvedSince(Instant moment, CancellationToken stop) =>
        db.SafetyCopies.AnyAsync(c => c.State == SafetyCopyState.Proved && c.At >= moment, stop);

    internal Task<SafetyCopy> KeepProof((Instant Begun, Instant Done) when, Actor actor, SafetyCopyContent content, CancellationToken stop) =>
        Keep(SafetyCopy.Proved(ids.Next(), when.Begun, actor.Name, content, when.Done), actor, stop);

    internal Task<SafetyCopy> KeepFailure(Instant at, Actor actor, string problem, CancellationToken stop)
    {
        LogFailure(problem);
        return Keep(SafetyCopy.Failed(ids.Next(), at, actor.Name, BackupTrouble.Cut(problem)), actor, stop);
    }

    /// <summary>A disk that is full for the backup may be full for its record: the log has it then.</summary>
    private async Task<SafetyCopy> Keep(SafetyCopy copy, Actor actor, CancellationToken stop)
    {
        meter.BackedUp(copy.State);
        try
        {
            db.SafetyCopies.Add(copy);
            if (actor.Account is not null) trail.Add(actor, "backup-made", AuditSubject.Backup(copy.Id), Terms.Of(copy.State));
            await db.SaveChangesAsync(stop);
            var oldest = await db.SafetyCopies.OrderByDescending(c => c.At).Skip(Kept).Select(c => (Instant?)c.At).FirstOrDefaultAsync(stop);
            if (oldest is { } at) await db.SafetyCopies.Where(c => c.At <= at).ExecuteDeleteAsync(stop);
        }
        catch (Exception failure) when (failure is DbUpdateException or DbException)
        {
            LogNotKept(failure);
        }

        return copy;
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "No backup: {Problem}")]
    private partial void LogFailure(string problem);

    [LoggerMessage(Level = LogLevel.Error, Message = "What came of a backup could not be kept.")]
    private partial void LogNotKept(Exception failure);
}
