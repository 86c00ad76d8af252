using System.Buffers.Binary;
using CoachOffice.Data.Bookings;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.PostgreSql;

/// <summary>One advisory lock for each holder, always in the same order; the exclusion constraint alone would make two that overlap crosswise kill each other.</summary>
internal sealed class PostgreSqlTimeLocks(OfficeDb db) : ITimeLocks
{
    public async Task Hold(IReadOnlyList<TimeHolder> holders, CancellationToken stop)
    {
        if (db.Database.CurrentTransaction is null) throw new InvalidOperationException("Begin a transaction before asking for time.");
        foreach (var key in holders.Select(KeyOf).Distinct().Order()) await db.Database.ExecuteSqlAsync($"SELECT pg_advisory_xact_lock({key})", stop);
    }

    public async Task<bool> Try(IReadOnlyList<TimeHolder> holders, CancellationToken stop)
    {
        foreach (var key in holders.Select(KeyOf).Distinct().Order())
        {
            if (!await db.Database.SqlQuery<bool>($"SELECT pg_try_advisory_xact_lock({key}) AS \"Value\"").SingleAsync(stop)) return false;
        }

        return true;
    }

    // Two holders that share a key only wait for each other once more than needed.
    private static long KeyOf(TimeHolder holder)
    {
        Span<byte> bytes = stackalloc byte[16];
        holder.Id.TryWriteBytes(bytes);
        return BinaryPrimitives.ReadInt64LittleEndian(bytes) ^ BinaryPrimitives.ReadInt64LittleEndian(bytes[8..]);
    }
}
