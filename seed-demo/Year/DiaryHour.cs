using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.SeedDemo.Swings;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Ledger.Packages;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>The desk's part of a day: booking what comes, marking who came, taking payment.</summary>
internal sealed class DiaryHour(Scene scene, IReadOnlyList<StudentLife> lives)
{
    private const int Ahead = 3;
    private const int Coming = 14;

    // A chance of its own, so that swings and practice stay what they were.
    private readonly Chance _chance = new(15_485_863);
    private readonly List<(LocalDate On, BookingId Booking)> _toCallOff = [];
    private Diary? _diary;

    /// <summary>The morning: lessons three days ahead are booked, the group of a Saturday, now and then something that is called off later.</summary>
    public async Task Morning(LocalDate day, CancellationToken stop)
    {
        _diary ??= await Diary.Open(scene, day, stop);
        foreach (var life in lives.Where(l => l.IsRegistered && l.IsTaughtOn(day.PlusDays(Ahead))))
        {
            if (life.Seat % 4 == 0 && life.Persona.Age >= 18) await Package(life, stop);
            await Book(life, day.PlusDays(Ahead), stop);
        }

        if (GroupAhead(day) is { } ahead && day.Day > 14) await Group(day.PlusDays(ahead), stop);
        foreach (var (_, booking) in _toCallOff.Where(c => c.On == day).ToList())
            await scene.Office.Must((CancelBooking cancel) => cancel.Of(booking, null, _chance.Is(0.8) ? CancelReason.ByStudent : CancelReason.ByPractice, scene.Cast.Desk, stop));
        if (_chance.Is(0.15)) await BookAndThinkAgain(day, stop);
        if (day == scene.Calendar.Today) await Ahead14(day, stop);
    }

    // In every other month two days ahead, so that they are reminded; else on the day before, which is too late for it.
    private static int? GroupAhead(LocalDate day) => (day.DayOfWeek, day.Month % 2) switch
    {
        (IsoDayOfWeek.Thursday, 0) => 2,
        (IsoDayOfWeek.Friday, 1) => 1,
        _ => null,
    };

    /// <summary>The evening: who came is marked; most pay at once, some later.</summary>
    public async Task Evening(LocalDate day, CancellationToken stop)
    {
        var (from, until) = (scene.Calendar.At(day, LocalTime.Midnight), scene.Calendar.At(day, new LocalTime(17, 0)));
        var today = await scene.Office.Read(db => db.Bookings.AsNoTracking().Include(b => b.Seats).Where(b => b.Starts >= from && b.Starts < until && b.Status == BookingStatus.Confirmed).OrderBy(b => b.Starts).ThenBy(b => b.Id).ToListAsync(stop));
        foreach (var booking in today)
        {
            foreach (var seat in booking.Seats.Where(s => s.Status == SeatStatus.Booked).OrderBy(s => s.Id.Value))
            {
                var life = lives.First(l => l.Id == seat.StudentId);
                var came = life.IsTaughtOn(day) || !_chance.Is(0.15);
                await scene.Office.Must((MarkAttendance mark) => mark.Of(booking.Id, seat.Id, came, scene.Cast.Desk, stop));
            }
        }

        if (day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Tuesday) await TakeMoney(stop);
    }

    private async Task Book(StudentLife life, LocalDate day, CancellationToken stop)
    {
        var minor = life.Persona.Age < 18;
        var hours = day.DayOfWeek == IsoDayOfWeek.Wednesday ? new[] { 14, 15, 16 } : [10, 12, 14, 15, 16, 11, 13];
        foreach (var hour in hours)
        {
            var form = new BookingForm { OfferingId = minor ? _diary!.Junior : _diary!.Private, CoachId = life.Coach.Account!.Value, PlaceId = _diary.Range, Start = day.At(new LocalTime(hour, minor ? 30 : 0)), Students = [life.Id] };
            if ((await scene.Office.Do((BookLesson book) => book.As(form, scene.Cast.Desk, stop))).Succeeded) return;
        }
    }

    private async Task Group(LocalDate day, CancellationToken stop)
    {
        var there = await Present(stop);
        var who = there.Where(l => l.Persona.Age is >= 18 and < 75).OrderBy(l => (l.Seat * 37 + day.DayOfYear) % 101).Take(_chance.Between(2, 5)).Select(l => l.Id).ToList();
        await scene.Office.Do((BookLesson book) => book.As(new BookingForm { OfferingId = _diary!.Group, CoachId = scene.Cast.Second.Account!.Value, PlaceId = _diary.Range, Start = day.At(new LocalTime(9, 0)), Students = who }, scene.Cast.Desk, stop));
    }

    // Booked for the week after; called off on the day itself, which is late, or some days before.
    private async Task BookAndThinkAgain(LocalDate day, CancellationToken stop)
    {
        var there = await Present(stop);
        if (there.Count == 0) return;
        var life = _chance.Of(there);
        var start = day.PlusDays(6).At(new LocalTime(17, 30));
        var booked = await scene.Office.Do((BookLesson book) => book.As(new BookingForm { OfferingId = _diary!.Private, CoachId = life.Coach.Account!.Value, PlaceId = _diary.Range, Start = start, Students = [life.Id] }, scene.Cast.Desk, stop));
        if (booked.TryGet(out var id)) _toCallOff.Add((day.PlusDays(_chance.Is(0.5) ? 6 : 2), id));
    }

    private async Task Ahead14(LocalDate day, CancellationToken stop)
    {
        var there = await Present(stop);
        for (var n = 0; n < Coming; n++)
        {
            foreach (var life in there.Where(l => l.Seat % Coming == n)) await Book(life, day.PlusDays(n), stop);
        }

        await Group(day.PlusDays(6 - (int)day.DayOfWeek % 6), stop);
        await scene.Office.Do((BookLesson book) => book.As(new BookingForm { OfferingId = _diary!.OnCourse, CoachId = scene.Cast.First.Account!.Value, PlaceId = _diary.Links, Start = day.PlusDays(2).At(new LocalTime(9, 30)), Students = [.. there.Take(2).Select(l => l.Id)] }, scene.Cast.Desk, stop));
    }

    private async Task Package(StudentLife life, CancellationToken stop)
    {
        var has = await scene.Office.Read(db => db.Packages.AnyAsync(p => p.StudentId == life.Id, stop));
        if (has) return;
        var payer = await scene.Office.Must((OpenPayer open) => open.For(life.Id, scene.Cast.Desk, stop));
        await scene.Office.Must((SellPackage sell) => sell.From(new SaleForm { Id = EntryId.From(scene.Office.Ids.Next()), PayerId = payer, StudentId = life.Id, OfferId = _diary!.Five }, scene.Cast.Desk, stop));
    }

    private async Task TakeMoney(CancellationToken stop)
    {
        var owing = await scene.Office.Read(db => db.LedgerPostings.Where(p => p.Account == LedgerAccount.Receivable)
            .Join(db.LedgerEntries, p => p.EntryId, e => e.Id, (p, e) => new { e.PayerId, p.AmountMinor })
            .GroupBy(p => p.PayerId).Select(g => new { Payer = g.Key, Owed = g.Sum(p => p.AmountMinor) }).Where(p => p.Owed > 0).OrderBy(p => p.Payer).ToListAsync(stop));
        foreach (var payer in owing.Where(_ => _chance.Is(0.7)))
        {
            var method = _chance.Of([PaymentMethod.CardTerminal, PaymentMethod.CardTerminal, PaymentMethod.Cash, PaymentMethod.Transfer]);
            var form = new PaymentForm { Id = EntryId.From(scene.Office.Ids.Next()), PayerId = payer.Payer, Amount = (payer.Owed / 100m).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture), Method = method, Reference = method == PaymentMethod.CardTerminal ? $"slip {_chance.Between(100, 999)}" : "" };
            await scene.Office.Must((TakePayment take) => take.From(form, scene.Cast.Desk, stop));
        }
    }

    private async Task<IReadOnlyList<StudentLife>> Present(CancellationToken stop)
    {
        var here = (await scene.Office.Read(db => db.Students.Where(s => s.ArchivedAt == null && s.ErasedAt == null).Select(s => s.Id).ToListAsync(stop))).ToHashSet();
        return [.. lives.Where(l => l.IsRegistered && here.Contains(l.Id))];
    }
}
