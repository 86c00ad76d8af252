using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.UseCases.Access;

/// <summary>The thing an audit row speaks of.</summary>
/// <param name="Kind">E.g. <c>student</c>.</param>
/// <param name="Id">Its identity.</param>
public sealed record AuditSubject(string Kind, Guid Id)
{
    public static AuditSubject Of(StudentId id) => new("student", id.Value);

    public static AuditSubject Of(PayerId id) => new("payer", id.Value);

    public static AuditSubject Of(PackageOfferId id) => new("package-offer", id.Value);

    public static AuditSubject Of(DocumentId id) => new("document", id.Value);

    public static AuditSubject Backup(Guid id) => new("backup", id);

    public static AuditSubject MoneyTerms(Guid id) => new("money-terms", id);

    public static AuditSubject Of(LessonId id) => new("lesson", id.Value);

    public static AuditSubject Of(ReviewId id) => new("remote-review", id.Value);

    public static AuditSubject Of(MediaId id) => new("media", id.Value);

    public static AuditSubject Of(PlanId id) => new("plan", id.Value);

    public static AuditSubject Of(BookingId id) => new("booking", id.Value);

    public static AuditSubject Of(PlaceId id) => new("place", id.Value);

    public static AuditSubject Of(ResourceId id) => new("bay", id.Value);

    public static AuditSubject Of(OfferingId id) => new("offering", id.Value);

    public static AuditSubject Of(AccountId id) => new("account", id.Value);

    public static AuditSubject Of(GroupId id) => new("group", id.Value);

    public static AuditSubject StudentFile(Guid id) => new("student-list", id);

    public static AuditSubject Practice(Guid id) => new("practice", id);

    public static AuditSubject MessageRule(Guid id) => new("message-rule", id);

    public static AuditSubject Message(Guid id) => new("message", id);

    /// <summary>An edition of the rulebook, by its number.</summary>
    public static AuditSubject Edition(int number) => new("rulebook", new Guid(number, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]));

    public static AuditSubject Sheet(Guid id) => new("reading-sheet", id);

    public static AuditSubject Retest(Guid id) => new("retest", id);

    public static AuditSubject Hours(Guid id) => new("hours", id);

    public static AuditSubject Terms(Guid id) => new("terms", id);
}
