using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Data.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

/// <summary>A coach's morning list: what the day holds, when it holds anything. Only to a coach who asked for it.</summary>
public sealed class MorningLetter(OfficeDb db, IServiceProvider services, TodayDiary diary, Letters letters) : IOfficeLetter
{
    private const int MostLines = 12;

    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.MorningList];

    /// <inheritdoc/>
    public bool MayRepeat => true;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (await Coach(facts.Message, stop) is not { DisabledAt: null, WantsMorningList: true } coach) return new SendingVerdict.Never("list-not-wanted");
        if (facts.Dates.DayOf(facts.Message.DueAt) != facts.Today) return new SendingVerdict.Never("nothing-today");
        return (await Read(coach, facts, stop)).IsEmpty ? new SendingVerdict.Never("nothing-today") : new SendingVerdict.Go();
    }

    /// <inheritdoc/>
    public async Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return await Coach(facts.Message, stop) is { Email: { Length: > 0 } mail } coach ? new MailRecipient(coach.DisplayName, mail, false) : null;
    }

    /// <inheritdoc/>
    public async Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        var said = await Read((await Coach(facts.Message, stop))!, facts, stop);
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public async Task<string> Addressee(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return (await Coach(message, stop))?.DisplayName ?? "";
    }

    private Task<Account?> Coach(Message message, CancellationToken stop) => db.Users.AsNoTracking().SingleOrDefaultAsync(u => u.Id == message.SubjectId, stop);

    private async Task<MorningLetterFacts> Read(Account coach, OfficeFacts facts, CancellationToken stop)
    {
        // Asked for only now: the page of the day names who stuck messages go to, and for that it knows every family of letters, this one too.
        var (actor, page) = (coach.AsActor(), services.GetRequiredService<TodayPage>());
        var (today, lessons, zone) = (await page.For(actor, MostLines, stop), await diary.For(actor, stop), facts.Dates.Zone);
        var waiting = actor.MayTeach ? await db.Messages.CountAsync(m => m.State == MessageState.AwaitsApproval, stop) : 0;
        var stuck = await db.Messages.CountAsync(m => m.State == MessageState.NeedsAttention || m.State == MessageState.Unknown, stop);
        return new MorningLetterFacts
        {
            Greeting = CleanText.Line(coach.DisplayName),
            Practice = CleanText.Line(facts.Practice.Name),
            Day = facts.Today.ToString("dddd d MMMM", CultureInfo.InvariantCulture),
            Alerts = Lines(today.Safety, s => $"{s.StudentName} reported pain{(s.Emergency ? " with a sign that cannot wait" : "")}"),
            Lessons = Lines(lessons.Booked, b => MorningWords.Lesson(b, zone)),
            Reviews = Lines(lessons.Reviews, r => $"{r.StudentName}, promised by {MorningWords.Moment(r.PromisedBy, zone)}"),
            Drafts = Lines(today.Drafts, d => d.StudentName),
            Retests = Lines(today.Retests, r => $"{r.StudentName}: {r.FaultName}"),
            Messages = [.. MorningWords.Counted(waiting, "waits for your yes", "wait for your yes"), .. MorningWords.Counted(stuck, "did not go and needs a look", "did not go and need a look")],
            Link = $"{facts.Practice.PublicAddress}/",
        };
    }

    private static IReadOnlyList<string> Lines<T>(IEnumerable<T> rows, Func<T, string> say)
    {
        var all = rows.ToList();
        return [.. all.Take(MostLines).Select(r => CleanText.Line(say(r))), .. all.Count > MostLines ? (string[])["and more"] : []];
    }
}
