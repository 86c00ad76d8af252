using CoachOffice.Data;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Looks for records that may be one person: same name with the same birth date or phone, or the same mail address.</summary>
public sealed class FindDoubles(OfficeDb db)
{
    private const int Most = 100;

    /// <summary>The likelier pairs first; at most a hundred.</summary>
    public async Task<IReadOnlyList<DoublePair>> Now(CancellationToken stop = default)
    {
        var all = await db.Students.AsNoTracking().Where(s => s.ErasedAt == null).OrderBy(s => s.AddedAt).ThenBy(s => s.Id)
            .Select(s => new Record(s.Id, s.GivenName, s.FamilyName, s.Email, s.Phone, s.BirthDate)).ToListAsync(stop);
        var named = Pairs(all, r => StudentSearch.TextOf(r.GivenName, r.FamilyName)).Select(p => (p.One, p.Other, Why: Common(p.One, p.Other))).Where(p => p.Why is not null).ToList();
        var known = named.Select(p => (p.One.Id, p.Other.Id)).ToHashSet();
        var mailed = Pairs(all.Where(r => r.Email.Length > 0), r => StudentSearch.Fold(r.Email)).Where(p => !known.Contains((p.One.Id, p.Other.Id)));
        return
        [
            .. named.Select(p => Pair(p.One, p.Other, p.Why!, mayBeFamily: false))
                .Concat(mailed.Select(p => Pair(p.One, p.Other, "same mail address", mayBeFamily: true))).Take(Most),
        ];
    }

    private static string? Common(Record one, Record other)
    {
        if (one.BirthDate is not null && other.BirthDate is not null) return one.BirthDate == other.BirthDate ? "same name and birth date" : null;
        if (one.Email.Length > 0 && StudentSearch.Fold(one.Email) == StudentSearch.Fold(other.Email)) return "same name and mail address";
        return PhoneDigits.Of(one.Phone) is { Length: > 0 } digits && digits == PhoneDigits.Of(other.Phone) ? "same name and phone" : null;
    }

    private static IEnumerable<(Record One, Record Other)> Pairs(IEnumerable<Record> all, Func<Record, string> key) =>
        from same in all.GroupBy(key, StringComparer.Ordinal)
        let records = same.Take(Most).ToList()
        from i in Enumerable.Range(0, records.Count)
        from other in records.Skip(i + 1)
        select (records[i], other);

    private static DoublePair Pair(Record one, Record other, string why, bool mayBeFamily) => new(one.Id, one.Name, other.Id, other.Name, why, mayBeFamily);

    private sealed record Record(StudentId Id, string GivenName, string FamilyName, string Email, string Phone, LocalDate? BirthDate)
    {
        public string Name => $"{GivenName} {FamilyName}".Trim();
    }
}
