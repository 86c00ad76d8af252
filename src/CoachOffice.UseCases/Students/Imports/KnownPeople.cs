using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Everybody a row may be, found by mail address and by name.</summary>
internal sealed class KnownPeople
{
    private readonly Dictionary<string, List<KnownPerson>> _byMail = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<KnownPerson>> _byName = new(StringComparer.Ordinal);

    public void Add(KnownPerson person)
    {
        Into(_byName, NameOf(person.Details), person);
        if (person.Details.Email.Length > 0) Into(_byMail, StudentSearch.Fold(person.Details.Email), person);
    }

    /// <summary>Who the row is, with the reason; or nobody, with what is odd about it.</summary>
    public (KnownPerson? Person, string Sentence) Find(StudentDetails row, SharedMail shared)
    {
        var named = _byName.GetValueOrDefault(NameOf(row)) ?? [];
        if (named.Find(p => row.BirthDate is not null && p.Details.BirthDate == row.BirthDate) is { } born) return (born, "same name and birth date");
        if (named.Find(p => SameMail(p.Details, row) && MayBeOne(p.Details, row)) is { } mailed) return (mailed, "same name and mail address");
        if (named.Find(p => SamePhone(p.Details, row) && MayBeOne(p.Details, row)) is { } phoned) return (phoned, "same name and phone");
        if (IsNameAlone(row) && named.Count > 0) return (named[0], "same name, and the row says nothing else to tell them apart by");
        var sharing = row.Email.Length == 0 ? null : (_byMail.GetValueOrDefault(StudentSearch.Fold(row.Email)) ?? []).Find(p => MayBeOne(p.Details, row));
        if (sharing is not null && shared == SharedMail.SamePerson) return (sharing, $"same mail address as {sharing.Name}");
        if (sharing is not null) return (null, $"Shares the mail address of {sharing.Name}{Where(sharing)}.");
        return (null, named.Count > 0 ? $"Another {named[0].Name} is there{Where(named[0])}." : "");
    }

    /// <summary>" (line 12)" for an earlier row of the list.</summary>
    public static string Where(KnownPerson person) => person.Id is null ? $" (line {person.Line})" : "";

    // Father and son may share name and mail address; two birth dates tell them apart.
    private static bool MayBeOne(StudentDetails a, StudentDetails b) => a.BirthDate is null || b.BirthDate is null || a.BirthDate == b.BirthDate;

    private static bool SameMail(StudentDetails a, StudentDetails b) => a.Email.Length > 0 && StudentSearch.Fold(a.Email) == StudentSearch.Fold(b.Email);

    private static bool SamePhone(StudentDetails a, StudentDetails b) => PhoneDigits.Of(a.Phone) is { Length: > 0 } digits && digits == PhoneDigits.Of(b.Phone);

    private static bool IsNameAlone(StudentDetails row) => row.BirthDate is null && row.Email.Length == 0 && row.Phone.Length == 0;

    private static string NameOf(StudentDetails details) => StudentSearch.TextOf(details.GivenName, details.FamilyName);

    private static void Into(Dictionary<string, List<KnownPerson>> index, string key, KnownPerson person)
    {
        if (!index.TryGetValue(key, out var there)) index[key] = there = [];
        there.Add(person);
    }
}
