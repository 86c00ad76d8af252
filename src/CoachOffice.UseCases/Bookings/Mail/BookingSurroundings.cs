using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Calendars;
using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>What letters about bookings have in common: whom they greet, what they name, and the link to the student's lessons.</summary>
public sealed class BookingSurroundings(OfficeDb db, PrivateLinks links)
{
    // A letter is read, not studied: a long row is on the page.
    private const int MostListed = 12;

    /// <summary>The terms in force; the usual ones until somebody wrote others.</summary>
    public Task<BookingTerms> Terms(CancellationToken stop) => db.Terms(stop);

    /// <summary>The facts of a letter about lessons, the first of which stands for what they have in common; mints the link.</summary>
    public BookingLetterFacts Of(OfficeFacts facts, MailRecipient recipient, IReadOnlyList<LessonFacts> lessons)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        ArgumentNullException.ThrowIfNull(lessons);
        var (student, first) = (facts.Student!, lessons[0]);
        return new BookingLetterFacts
        {
            Greeting = CleanText.Line(recipient.IsGuardian ? recipient.Name : student.GivenName),
            Student = CleanText.Line(student.GivenName),
            StopLink = facts.StopLink?.ToString() ?? "",
            ForGuardian = recipient.IsGuardian,
            OpensLessons = true,
            Practice = CleanText.Line(facts.Practice.Name),
            What = CleanText.Line(first.Offering.Name),
            When = [.. lessons.Take(MostListed).Select(l => BookingWords.When(l.Booking))],
            Count = lessons.Count,
            Coach = CleanText.Line(first.Coach),
            Where = CleanText.Line(first.Where),
            Link = $"{facts.Practice.PublicAddress}/v/{links.MintVisits(student.Id, IssueVisitLink.Life)}",
        };
    }

    /// <summary>A note about the first of some lessons in a few words, with the link; for a telephone.</summary>
    public string InBrief(OfficeFacts facts, string what, LessonFacts lesson)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(lesson);
        return $"{CleanText.Line(facts.Practice.Name)}: {what} {BookingWords.When(lesson.Booking)}. {facts.Practice.PublicAddress}/v/{links.MintVisits(facts.Student!.Id, IssueVisitLink.Life)}";
    }

    /// <summary>The practice's money.</summary>
    public static Currency CurrencyOf(OfficeFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return Currency.Of(facts.Practice.Currency);
    }
}
