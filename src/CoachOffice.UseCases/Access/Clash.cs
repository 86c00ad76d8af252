using CoachOffice.Data;
using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>Two people edited the same thing: says who saved first and when, then each field that differs with both values.</summary>
public sealed class Clash(OfficeDb db, PracticeClock clock)
{
    /// <summary>The code, for tests and pages.</summary>
    public const string Code = "changed-meanwhile";

    /// <summary>Never empty; nothing was saved.</summary>
    public async Task<IReadOnlyList<Refusal>> Over(AuditSubject subject, string what, IEnumerable<Difference> fields, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(subject);
        var last = await db.AuditEntries.Where(a => a.SubjectId == subject.Id).OrderByDescending(a => a.At).ThenByDescending(a => a.Id).FirstOrDefaultAsync(stop);
        var zone = await clock.Zone(stop);
        var who = last is null ? "Someone else" : last.ActorName;
        var when = last is null ? "" : $" at {last.At.InZone(zone):HH:mm}";
        return
        [
            new(Code, $"{who} saved {what}{when}, after you opened it. Nothing of yours was lost and nothing was overwritten: choose below, then save again."),
            .. fields.Where(f => !string.Equals(f.Kept, f.Yours, StringComparison.Ordinal))
                .Select(f => new Refusal(Code, $"{f.Label}: saved is '{f.Kept}', yours is '{f.Yours}'.", f.Field)),
        ];
    }
}
