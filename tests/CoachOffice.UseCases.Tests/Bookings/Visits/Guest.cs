using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.Bookings.Waiting;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Visits;

/// <summary>Students who book by themselves at a practice that is open on Tuesdays from nine to twelve, with one coach and no bays needed.</summary>
public sealed class Guest
{
    private static int _forms;

    private Guest(Diary diary) => Diary = diary;

    public static LocalDate Tuesday { get; } = new(2026, 3, 10);

    public Diary Diary { get; }

    public TestOffice Office => Diary.Office;

    public static async Task<Guest> Of(TestOffice office)
    {
        var diary = await Diary.Of(office);
        await office.GiveHours(office.Coach.Account!.Value, diary.Range, IsoDayOfWeek.Tuesday, "09:00", "12:00");
        await office.SetTerms(new BookingTermsDetails { StepMinutes = 60 });
        await office.Change(async db =>
        {
            var offering = await db.Offerings.FindAsync(diary.Private);
            offering!.Change(new OfferingDetails { Name = "Private hour", Kind = OfferingKind.Private, PriceMinor = 4500, Minutes = 60, Places = [diary.Range], Coaches = [office.Coach.Account!.Value] });
        });
        return new Guest(diary);
    }

    public async Task<VisitPass> Student(string given) => new(await Diary.Student(given), Guid.Empty);

    public HoldForm At(int hour, int minute = 0) => new()
    {
        Id = BookingId.From(new Guid(Interlocked.Increment(ref _forms), 9, 9, [0, 0, 0, 0, 0, 0, 0, 0])),
        OfferingId = Diary.Private,
        CoachId = Office.Coach.Account!.Value,
        PlaceId = Diary.Range,
        Start = Tuesday.At(new LocalTime(hour, minute)),
    };

    public WaitingForm AnyTime(LocalDate? first = null, LocalDate? last = null) => new()
    {
        Id = new Guid(Interlocked.Increment(ref _forms), 8, 8, [0, 0, 0, 0, 0, 0, 0, 0]),
        OfferingId = Diary.Private,
        FirstDay = first ?? Tuesday,
        LastDay = last ?? first ?? Tuesday,
    };

    public Task<BookingId> Hold(HoldForm form, VisitPass pass) => Office.Must((HoldVisit hold) => hold.For(form, pass));

    public async Task<BookingId> Book(HoldForm form, VisitPass pass)
    {
        var id = await Hold(form, pass);
        return await Office.Must((ConfirmVisit confirm) => confirm.Of(id, pass));
    }

    public Task<BookingId> Cancel(BookingId id, VisitPass pass, bool knowsItIsLate = false) => Office.Must((CancelVisit cancel) => cancel.Of(id, knowsItIsLate, pass));

    public Task<Guid> Wait(WaitingForm form, VisitPass pass) => Office.Must((JoinWaiting join) => join.For(form, pass));

    public Task<int> Minute() => Office.Do((LapseHolds lapse) => lapse.Due());

    public Task<Booking> Booking(BookingId id) => Office.Read(db => db.Bookings.AsNoTracking().Include(b => b.Seats).SingleAsync(b => b.Id == id));

    public Task<WaitingPlace> Waiting(Guid id) => Office.Read(db => db.WaitingPlaces.AsNoTracking().SingleAsync(w => w.Id == id));

    public Task<IReadOnlyList<VisitView>> Visits(VisitPass pass) => Office.Do((ReadVisits read) => read.All(pass));

    /// <summary>What is kept for a student just now.</summary>
    public async Task<VisitView?> Offer(VisitPass pass) => (await Visits(pass)).SingleOrDefault(v => v.Status == SeatStatus.Held);

    public async Task<IReadOnlyList<string>> Free(VisitPass pass) =>
        [.. (await Office.Must((FindFreeTimes find) => find.For(new FreeTimesQuestion { OfferingId = Diary.Private, From = Tuesday, Until = Tuesday, Student = pass.StudentId }, Domain.Access.Actor.Student))).Select(t => t.LocalStart.ToString("HH:mm", null))];

    /// <summary>A group of four on that Tuesday at two, filled by the office.</summary>
    public async Task<(BookingId Id, IReadOnlyList<StudentId> In)> FullGroup()
    {
        List<StudentId> members = [];
        foreach (var name in new[] { "Una", "Duo", "Tri", "Quad" }) members.Add(await Diary.Student(name));
        return (await Diary.Book(Diary.At(Tuesday.At(new LocalTime(14, 0)), [.. members]) with { OfferingId = Diary.Group }), members);
    }
}
