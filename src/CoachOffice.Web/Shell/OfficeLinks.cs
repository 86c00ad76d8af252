using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;

namespace CoachOffice.Web.Shell;

/// <summary>Addresses of the office's things, in one place.</summary>
internal static class OfficeLinks
{
    public const string FollowUps = "/follow-ups";

    public const string Money = "/money";

    public const string Prices = "/prices";

    public static string To(PayerId payer) => $"/payers/{payer.Value}";

    public static string To(DocumentId document) => $"/documents/{document.Value}";

    /// <summary>A student's own lessons, behind a private link.</summary>
    public const string MyLessons = "/my-lessons";

    /// <summary>One of them.</summary>
    public static string MyLesson(BookingId booking) => $"{MyLessons}/{booking.Value}";

    public static string To(StudentId student) => $"/students/{student.Value}";

    public const string Groups = "/students/groups";

    public static string To(GroupId group) => $"{Groups}/{group.Value}";

    public const string BringStudents = "/students/bring";

    public static string StudentList(Guid list) => $"{BringStudents}/{list}";

    public const string Doubles = "/students/doubles";

    public static string Merge(StudentId student) => $"/students/{student.Value}/merge";

    public static string Merge(StudentId stays, StudentId goes) => $"/students/{stays.Value}/merge/{goes.Value}";

    public const string Households = "/students/households";

    public static string Household(PayerId payer) => $"{Households}/{payer.Value}";

    public static string Pays(StudentId student) => $"/students/{student.Value}/pays";

    public static string NewLesson(StudentId student) => $"/students/{student.Value}/lessons/new";

    public static string Book(StudentId student) => $"/bookings/new?student={student.Value}";

    public static string Radar(StudentId student) => $"/students/{student.Value}/radar";

    public static string To(LessonId lesson) => $"/lessons/{lesson.Value}";

    public static string To(PlanId plan) => $"/plans/{plan.Value}";

    public static string To(PlaceId place) => $"/settings/places/{place.Value}";

    public static string To(OfferingId offering) => $"/settings/offering/{offering.Value}";

    public static string Retest(Guid retest) => $"/retests/{retest}";
}
