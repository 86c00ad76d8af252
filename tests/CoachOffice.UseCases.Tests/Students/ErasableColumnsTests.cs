using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Students;

/// <summary>A new text column must be decided upon: either erasing a student empties it and the trace test fills it, or it can never hold a word about a student, or a law asks to keep it.</summary>
public sealed class ErasableColumnsTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private static readonly string[] Erased =
    [
        "Bookings.Note",
        "CheckIns.Comment",
        "DeviceFiles.Answers", "DeviceFiles.ByName", "DeviceFiles.ImportedSha256", "DeviceFiles.Name", "DeviceFiles.Outcome", "DeviceFiles.Sha256",
        "LessonInputs.Json",
        "Lessons.Notes", "Lessons.Observations",
        "MailBounces.AddressSha256", "MailBounces.OnceKey", "MailBounces.Status",
        "MediaConsents.GivenBy",
        "Messages.OwnWords", "Messages.Reason",
        "Payers.Email", "Payers.Name", "Payers.PostalAddress",
        "PlanChanges.Reason",
        "PlanEdits.Changed", "PlanEdits.Comment", "PlanEdits.Original",
        "PlanStages.Drills", "PlanStages.Gate",
        "Plans.HoldReason", "Plans.IfThen", "Plans.Message",
        "RemoteReviews.BallFlight", "RemoteReviews.Felt", "RemoteReviews.Numbers",
        "Retests.Answer",
        "SheetSends.Content",
        "StoredDrafts.InputJson", "StoredDrafts.InputSha256", "StoredDrafts.Json",
        "StudentFiles.BroughtSha256", "StudentFiles.Name", "StudentFiles.Sha256",
        "Students.Contact", "Students.Email", "Students.FamilyName", "Students.GivenName", "Students.Goals", "Students.Guardian", "Students.Kit", "Students.Limits", "Students.Notes", "Students.Phone", "Students.SearchText",
    ];

    private static readonly string[] NeverAboutAStudent =
    [
        "AuditEntries.Action", "AuditEntries.ActorName", "AuditEntries.Detail", "AuditEntries.Subject",
        "BookingSeries.FirstStart", "BookingSeries.Rule", "BookingSeries.Zone",
        "Bookings.LocalStart", "Bookings.SeriesStart", "Bookings.Zone",
        "BooksInForce.AdoptedBy", "BooksInForce.Sha256",
        "BroughtStudents.Filled",
        "BusyTimes.Source",
        "CalendarFeeds.TokenSha256",
        "HoursExceptions.LocalFrom", "HoursExceptions.LocalUntil", "HoursExceptions.Note",
        "KeptRulebooks.Sha256", "KeptRulebooks.ShippedSha256", "KeptRulebooks.Text",
        "LedgerDocuments.By",
        "LedgerEntries.By",
        "Lessons.Sheet",
        "MediaItems.Marks", "MediaItems.Sha256", "MediaItems.SmallSha256",
        "Messages.ClaimedBy", "Messages.LastProblem", "Messages.OnceKey",
        "MessageWordings.Body", "MessageWordings.Subject", "MessageWordings.WrittenBy",
        "MoneyTerms.LegalName", "MoneyTerms.PostalAddress", "MoneyTerms.TaxNumber",
        "Offerings.Coaches", "Offerings.Name", "Offerings.Places", "Offerings.Resources",
        "PackageOffers.Name", "PackageOffers.Offerings",
        "Packages.Name", "Packages.Offerings",
        "Places.Address", "Places.Name",
        "PlanChanges.By",
        "PlanEdits.By", "PlanEdits.What",
        "PlanStages.Fault",
        "Plans.ApprovedBy",
        "Practices.Currency", "Practices.EmergencyNumber", "Practices.MailFrom", "Practices.Name", "Practices.PublicAddress", "Practices.Zone",
        "PrivateLinks.TokenSha256",
        "ReadingSheets.Measures", "ReadingSheets.Name",
        "Readings.Measure",
        "RememberedColumns.HeaderSha256", "RememberedColumns.Mapping",
        "RememberedStudentColumns.Columns", "RememberedStudentColumns.HeaderSha256",
        "RemoteReviews.Zone",
        "Resources.Name",
        "Retests.Fault", "Retests.Verdict",
        "ReviewClips.Sha256",
        "RulebookEditions.ByName", "RulebookEditions.Changes", "RulebookEditions.Own", "RulebookEditions.Sha256", "RulebookEditions.ShippedSha256", "RulebookEditions.Why",
        "RulebookWorks.Dropped", "RulebookWorks.Edits",
        "SafetyCopies.By", "SafetyCopies.Place", "SafetyCopies.Problem",
        "SecondReadings.Doubles",
        "ShippedBooks.Sha256", "ShippedBooks.Text",
        "StoredDrafts.Engine", "StoredDrafts.RulebookSha256",
        "StudentFiles.ByName", "StudentFiles.Columns", "StudentFiles.Outcome",
        "StudentGroups.Name",
    ];

    /// <summary>
    /// What tax law asks to keep, whoever is erased (GDPR article 17(3)(b)): receipts and statements as they were handed out, and the words of the
    /// ledger's entries, where the pages ask for no names.
    /// </summary>
    private static readonly string[] KeptByLaw = ["LedgerDocuments.Content", "LedgerEntries.Reference", "LedgerEntries.Text", "LedgerPostings.Text"];

    [Fact]
    public async Task Every_text_column_is_decided_upon()
    {
        var columns = await fixture.Office.Read(db => Task.FromResult(
            from type in db.Model.GetEntityTypes()
            where type.ClrType.Assembly == typeof(Student).Assembly
            from property in type.GetProperties()
            let stored = property.GetTypeMapping().Converter?.ProviderClrType ?? property.ClrType
            let word = Nullable.GetUnderlyingType(property.ClrType) ?? property.ClrType
            where stored == typeof(string) && !word.IsEnum
            select $"{type.GetTableName()}.{property.GetColumnName()}"));

        Assert.Equal(Erased.Concat(NeverAboutAStudent).Concat(KeptByLaw).Order(StringComparer.Ordinal), columns.Order(StringComparer.Ordinal));
    }
}
