using CoachOffice.Domain.Bookings;
using CsCheck;
using NodaTime;

namespace CoachOffice.Domain.Tests.Bookings;

/// <summary>Free times against somebody who looks at every minute: no arithmetic of intervals, only "is it open, is it taken" for each minute of a lesson.</summary>
public sealed class FreeTimesProperties
{
    /// <summary>Days around changes of the clock: an hour, half an hour, at midnight, off the hour (IANA tables), and one without.</summary>
    private static readonly (string Zone, LocalDate Day)[] Nights =
    [
        ("Europe/London", new(2026, 3, 28)), ("Europe/London", new(2026, 10, 24)), ("Australia/Lord_Howe", new(2026, 4, 4)), ("Australia/Lord_Howe", new(2026, 10, 3)),
        ("America/Santiago", new(2026, 4, 4)), ("America/Santiago", new(2026, 9, 5)), ("Pacific/Chatham", new(2026, 4, 4)), ("Asia/Kathmandu", new(2026, 5, 1)),
    ];

    private static readonly PlaceId[] Places = [Hours.Range, Hours.Course, PlaceId.From(FixedIds.Of(13))];

    private static readonly Gen<(int At, int Length, int Place)> Spans = Gen.Select(Gen.Int[0, (48 * 12) - 1], Gen.Int[1, 72], Gen.Int[0, 3], (at, length, place) => (at * 5, length * 5, place));

    [Fact]
    public void A_time_is_free_when_every_minute_of_it_is() =>
        Gen.Select(Gen.Int[0, Nights.Length - 1], Spans.Array[1, 5], Spans.Array[0, 3], Spans.Array[0, 5], Spans.Array[0, 2], Spans.Array[0, 4], Gen.Select(Gen.Int[1, 30], Gen.Int[0, 9], Gen.OneOf(Gen.Const(5), Gen.Const(10), Gen.Const(15), Gen.Const(20), Gen.Const(30), Gen.Const(60)), Gen.Int[0, 60].Array[3]))
            .Sample((night, weekly, closed, taken, student, bays, rest) =>
            {
                var scene = new Scene(Nights[night].Zone, Nights[night].Day) { Minutes = rest.Item1 * 5, Buffer = rest.Item2 * 5, Step = rest.Item3 };
                var book = new HoursBook([.. weekly.Select(scene.Weekly)], [.. closed.Select(scene.Exception)]);
                var diary = new Diary
                {
                    Open = OpenTimes.Of(Hours.Coach, book, scene.Days, scene.Zone),
                    Taken = [.. taken.Select(t => new CoachTaken(Hours.Coach, t.Place < 3 ? Places[t.Place] : null, scene.At(t)))],
                    Student = [.. student.Select(scene.At)],
                    Bays = bays.Length == 0 ? null : [.. bays.Select(b => new Bay(Places[b.Place % 3], [scene.At(b)]))],
                    Ways = [.. rest.Item4.Select((minutes, i) => Travel.Between(FixedIds.Of(50 + i), Places[i], Places[(i + 1) % 3], minutes))],
                };

                var found = FreeTimes.In(diary, scene.Wish).Select(t => (t.Starts, t.Place, t.LocalStart)).ToList();

                Assert.Equal(scene.ByTheMinute(book, diary).OrderBy(t => t.Starts).ThenBy(t => t.Place.Value), found);
            }, iter: 400);

    private sealed record Scene(string ZoneId, LocalDate First)
    {
        public int Minutes { get; init; }

        public int Buffer { get; init; }

        public int Step { get; init; }

        public DateTimeZone Zone => DateTimeZoneProviders.Tzdb[ZoneId];

        public DateInterval Days => new(First, First.PlusDays(1));

        private Instant Begin => First.AtStartOfDayInZone(Zone).ToInstant();

        public FreeTimeWish Wish => new(Minutes, Buffer, Step, new Interval(Begin + Duration.FromMinutes(70), Begin + Duration.FromHours(44)), Zone);

        public Interval At((int At, int Length, int Place) span) => new(Begin + Duration.FromMinutes(span.At), Begin + Duration.FromMinutes(span.At + span.Length));

        public WeeklyHours Weekly((int At, int Length, int Place) span)
        {
            var (from, until) = (span.At % (24 * 60), (span.At % (24 * 60)) + span.Length);
            var end = until >= 24 * 60 ? LocalTime.Midnight : LocalTime.FromMinutesSinceMidnight(until);
            return WeeklyHours.Of(FixedIds.Of(1), Hours.Coach, Places[span.Place % 3], new DayHours(First.PlusDays(span.At / (24 * 60)).DayOfWeek, LocalTime.FromMinutesSinceMidnight(from), end), First, null);
        }

        public HoursException Exception((int At, int Length, int Place) span)
        {
            var from = First.AtMidnight().PlusMinutes(span.At);
            var local = new LocalSpan(from, from.PlusMinutes(span.Length), DateTimeZone.Utc);
            return span.Place < 3 ? HoursException.Open(FixedIds.Of(2), Hours.Coach, Places[span.Place], local, "") : HoursException.Closed(FixedIds.Of(2), span.Length > 60 ? null : Hours.Coach, local, "");
        }

        public IEnumerable<(Instant Starts, PlaceId Place, LocalDateTime LocalStart)> ByTheMinute(HoursBook book, Diary diary)
        {
            for (var at = Wish.Starts.Start; at < Wish.Starts.End; at += Duration.FromMinutes(1))
            {
                var local = at.InZone(Zone).LocalDateTime;
                if (local.Minute % Step != 0 || LocalTimes.At(local, Zone) != at) continue;
                foreach (var place in Places.Where(p => IsFree(at, p, book, diary))) yield return (at, place, local);
            }
        }

        private bool IsFree(Instant at, PlaceId place, HoursBook book, Diary diary)
        {
            return Each(Minutes).All(m => IsOpen(at + m, place, book) && !diary.Student.Any(s => Within(at + m, s)))
                && Each(Minutes + Buffer).All(m => !diary.Taken.Any(t => IsTaken(at + m, place, t, diary)))
                && (diary.Bays is null || diary.Bays.Any(b => b.Place == place && Each(Minutes).All(m => !b.Taken.Any(t => Within(at + m, t)))));
        }

        private static bool IsTaken(Instant at, PlaceId place, CoachTaken taken, Diary diary)
        {
            var way = taken.Place is { } other && other != place ? diary.Ways.First(w => w.Joins(place, other)).Minutes : 0;
            return at >= taken.Time.Start - Duration.FromMinutes(way) && at < taken.Time.End + Duration.FromMinutes(way);
        }

        private bool IsOpen(Instant at, PlaceId place, HoursBook book) =>
            book.Exceptions.Any(e => e.OpenAt == place && Within(at, e.LocalFrom, e.LocalUntil))
            || (!book.Exceptions.Any(e => e.OpenAt is null && Within(at, e.LocalFrom, e.LocalUntil))
                && book.Weekly.Any(h => h.PlaceId == place && Days.Any(d => h.HoldsOn(d) && Within(at, d + h.From, h.Until == LocalTime.Midnight ? d.PlusDays(1).AtMidnight() : d + h.Until))));

        private bool Within(Instant at, LocalDateTime from, LocalDateTime until) => at < Days.End.PlusDays(1).AtStartOfDayInZone(Zone).ToInstant() && at >= LocalTimes.At(from, Zone) && at < LocalTimes.At(until, Zone);

        private static bool Within(Instant at, Interval time) => at >= time.Start && at < time.End;

        private static IEnumerable<Duration> Each(int minutes) => Enumerable.Range(0, minutes).Select(m => Duration.FromMinutes(m));
    }
}
