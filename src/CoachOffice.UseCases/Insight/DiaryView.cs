using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>The appointments of today.</summary>
/// <param name="Booked">Lessons of today, by start.</param>
/// <param name="Unmarked">Lessons of the last days of which nobody said who came.</param>
/// <param name="Reviews">Remote reviews that wait, the earliest promise first.</param>
public sealed record DiaryView(IReadOnlyList<DiaryRow> Booked, IReadOnlyList<DiaryRow> Unmarked, IReadOnlyList<DiaryReview> Reviews)
{
    public bool IsQuiet => Booked.Count == 0 && Unmarked.Count == 0 && Reviews.Count == 0;
}

/// <summary>A booked lesson.</summary>
public sealed record DiaryRow(BookingId Id, AccountId CoachId, Instant Starts, Instant Ends, string Offering)
{
    public int Places { get; init; }

    public IReadOnlyList<DiarySeat> Seats { get; init; } = [];
}

/// <summary>Who comes to it.</summary>
public sealed record DiarySeat(StudentId StudentId, string Name, SeatStatus Status)
{
    /// <summary>When the student said "I am coming", or null.</summary>
    public Instant? ComingAt { get; init; }
}

/// <summary>A remote review that waits.</summary>
public sealed record DiaryReview(ReviewId Id, AccountId? CoachId, string StudentName, Instant PromisedBy);
