using CoachOffice.Data;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Access;

/// <summary>The practice's own details, the same all through a request: its zone, its units and its rule for signing in are wanted on every page.</summary>
public sealed class ReadPractice(OfficeDb db, KeptPractice kept)
{
    private Practice? _practice;

    /// <summary>The practice, or null before the first run.</summary>
    public async Task<Practice?> Now(CancellationToken stop = default) => _practice ??= kept.Fresh ?? await Again(stop);

    /// <summary>The practice as it is at this moment, whatever this request saw before.</summary>
    public async Task<Practice?> Again(CancellationToken stop = default)
    {
        var reading = kept.Begin();
        _practice = await db.Practices.AsNoTracking().SingleOrDefaultAsync(stop);
        reading.Keep(_practice);
        return _practice;
    }
}
