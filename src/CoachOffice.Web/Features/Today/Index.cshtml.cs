using CoachOffice.UseCases;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Ledger.Packages;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.Web.Shell;
using NodaTime;

namespace CoachOffice.Web.Features.Today;

/// <summary>What needs a person now, in the order it needs them.</summary>
public sealed class IndexModel(TodayPage today, TodayDiary diary, PackageRows packages, ReadBackups backups, PracticeClock clock) : OfficePage
{
    public TodayView View { get; private set; } = null!;

    public DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    public bool IsQuiet => View is { Safety.Count: 0, Lessons.Count: 0, Drafts.Count: 0, Retests.Count: 0, Messages.Count: 0, Silent.Count: 0 } && Diary.IsQuiet && Ending.Count == 0 && Backup is null;

    /// <summary>Packages that end soon with lessons nobody has booked.</summary>
    public IReadOnlyList<PackageRow> Ending { get; private set; } = [];

    /// <summary>What an owner must do about backups; null when nothing.</summary>
    public string? Backup { get; private set; }

    internal DiaryView Diary { get; private set; } = null!;

    internal Instant Now => diary.Now;

    internal bool MayTeach => Actor.MayTeach;

    /// <summary>Every list whole.</summary>
    public bool All { get; private set; }

    public async Task OnGetAsync(bool all = false)
    {
        All = all;
        View = await today.For(Actor, all ? TodayPage.Most : TodayPage.Short);
        Diary = await diary.For(Actor);
        Ending = Actor.MayTakePayments ? await packages.EndingSoon(all ? TodayPage.Most : TodayPage.Short) : [];
        Backup = await backups.Notice(Actor);
        Zone = await clock.Zone();
    }

    /// <summary>The record for who teaches; the desk opens the student.</summary>
    public string Open(TodayLesson lesson) => Actor.MayTeach ? OfficeLinks.To(lesson.Id) : OfficeLinks.To(lesson.StudentId);

    /// <summary>Due today, or since when.</summary>
    public string Due(LocalDate day) => day < View.Today ? $"overdue since {DayWords.Of(day)}" : "due today";
}
