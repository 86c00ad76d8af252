using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>The fields of a student by the names <see cref="StudentFields"/> has for them, and how each is taken from another record.</summary>
internal static class MergeFields
{
    /// <summary>The field that is no detail: who pays.</summary>
    public const string Payer = "PayerId";

    private static readonly Dictionary<string, Func<StudentDetails, StudentDetails, StudentDetails>> Take = new(StringComparer.Ordinal)
    {
        [nameof(StudentDetails.GivenName)] = (d, from) => d with { GivenName = from.GivenName },
        [nameof(StudentDetails.FamilyName)] = (d, from) => d with { FamilyName = from.FamilyName },
        [nameof(StudentDetails.Email)] = (d, from) => d with { Email = from.Email },
        [nameof(StudentDetails.Phone)] = (d, from) => d with { Phone = from.Phone },
        [nameof(StudentDetails.BirthDate)] = (d, from) => d with { BirthDate = from.BirthDate },
        [nameof(StudentDetails.Guardian)] = (d, from) => d with { Guardian = from.Guardian },
        [nameof(StudentDetails.Hand)] = (d, from) => d with { Hand = from.Hand },
        [nameof(StudentDetails.Level)] = (d, from) => d with { Level = from.Level },
        [nameof(StudentDetails.Goals)] = (d, from) => d with { Goals = from.Goals },
        [nameof(StudentDetails.Kit)] = (d, from) => d with { Kit = from.Kit },
        [nameof(StudentDetails.Room)] = (d, from) => d with { Room = from.Room },
        [nameof(StudentDetails.MinutesPerWeek)] = (d, from) => d with { MinutesPerWeek = from.MinutesPerWeek },
        [nameof(StudentDetails.DaysPerWeek)] = (d, from) => d with { DaysPerWeek = from.DaysPerWeek },
        [nameof(StudentDetails.Limits)] = (d, from) => d with { Limits = from.Limits },
        [nameof(StudentDetails.ClubSpeedGoal)] = (d, from) => d with { ClubSpeedGoal = from.ClubSpeedGoal },
        [nameof(StudentDetails.Height)] = (d, from) => d with { Height = from.Height },
        [nameof(StudentDetails.Notes)] = (d, from) => d with { Notes = from.Notes },
    };

    /// <summary>Every field side by side.</summary>
    public static IReadOnlyList<MergeField> Of(Student stays, Student goes, IReadOnlyDictionary<PayerId, string> payers) =>
    [
        .. StudentFields.Compare(stays, goes).Select(d => new MergeField(d.Field, d.Label, d.Kept, d.Yours)),
        new MergeField(Payer, "Who pays", NameOf(stays, payers), NameOf(goes, payers)),
    ];

    /// <summary>The details that stay, with these fields taken from the record that goes.</summary>
    public static StudentDetails Chosen(Student stays, Student goes, IReadOnlyCollection<string> taken) =>
        taken.Where(Take.ContainsKey).Aggregate(stays.Details(), (details, field) => Take[field](details, goes.Details()));

    /// <summary>Who pays: as chosen where both have somebody, else whoever there is.</summary>
    public static PayerId? PayerOf(Student stays, Student goes, IReadOnlyCollection<string> taken) =>
        taken.Contains(Payer) && goes.PayerId is not null ? goes.PayerId : stays.PayerId ?? goes.PayerId;

    private static string NameOf(Student student, IReadOnlyDictionary<PayerId, string> payers) => student.PayerId is { } payer ? payers.GetValueOrDefault(payer, "") : "";
}
