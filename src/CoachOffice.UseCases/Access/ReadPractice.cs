using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>The practice's own details.</summary>
public sealed class ReadPractice(OfficeDb db)
{
    /// <summary>The practice, or null before the first run.</summary>
    public Task<Practice?> Now(CancellationToken stop = default) => db.Practices.AsNoTracking().SingleOrDefaultAsync(stop);
}
