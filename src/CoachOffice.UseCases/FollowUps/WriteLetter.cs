using System.Globalization;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Plans;
using MimeKit;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Writes the letter of a message at the moment it goes out: words and links exist from here on only; of a link only the hash is kept.</summary>
public sealed class WriteLetter(PlanBooks books, PrivateLinks links, Letters letters)
{
    /// <summary>Behind a plan's link: straight to the page that takes a note.</summary>
    private const string NotePage = "/note";

    private static readonly Duration PlanLinkLife = Duration.FromDays(180);
    private static readonly LocalDatePattern Written = LocalDatePattern.Create("dddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>The mail as it leaves. The links' rows are added to the context; the caller saves them before sending.</summary>
    public async Task<MimeMessage> Of(SendingFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var address = facts.Practice.PublicAddress;
        var link = $"{address}/p/{links.Mint(facts.Plan, PlanLinkLife, LinkPurpose.Plan)}";
        var stopLink = $"{address}/stop/{links.MintStop(facts.Student.Id, MessagePurposes.Of(facts.Message.Kind))}";
        if (facts.Message.Kind == MessageKind.WeeklyCheckIn) link += NotePage;
        var letter = letters.Render(facts.Message.Kind, await Say(facts, link, stopLink, stop), facts.Words);
        return MailForm.Of(letter, Address(facts, stopLink));
    }

    private async Task<LetterFacts> Say(SendingFacts facts, string link, string stopLink, CancellationToken stop)
    {
        var (plan, book) = (facts.Plan, await books.Named(facts.Letter.RulebookSha256, stop));
        var draft = new Lazy<Draft>(() => DraftJson.Read(facts.Letter.Draft));
        var recipient = facts.Student.RecipientOn(facts.Today)!;
        var now = plan.Stages.Where(s => s.Status == StageStatus.Current).ToList();
        return new LetterFacts
        {
            Greeting = CleanText.Line(recipient.IsGuardian ? recipient.Name : facts.Student.GivenName),
            Student = CleanText.Line(facts.Student.GivenName),
            ForGuardian = recipient.IsGuardian,
            Practice = CleanText.Line(facts.Practice.Name),
            Coach = CleanText.Line(plan.ApprovedBy),
            EmergencyNumber = CleanText.Line(facts.Practice.EmergencyNumber),
            Link = link,
            StopLink = stopLink,
            LessonOn = Written.Format(facts.Letter.LessonOn),
            LookOn = facts.Looks is [var first, ..] ? Written.Format(first.DueOn) : "",
            Message = CleanText.Paragraphs(plan.Message),
            IfThen = CleanText.Line(plan.IfThen),
            Reasons = new Deferred(() => [.. draft.Value.Focus.OrderBy(f => f.Order).Select(f => f.Because)]),
            Drills = [.. now.SelectMany(s => s.Drills).Select(d => CleanText.Line($"{DrillText.Of(d)}. Cue: {d.Cue}"))],
            Measures = [.. Asked(facts).Select(l => SameWay.Of(book, FaultId.Parse(l.Fault), facts.Letter)).Distinct()],
            Cautions = facts.Message.Kind == MessageKind.PlanDelivery ? new Deferred(() => [.. draft.Value.Cautions.Select(c => c.Text)]) : [],
            Wording = facts.Turn % 2,
        };
    }

    // One prompt names all that is due by now, so that nobody is asked twice on one day.
    private static IEnumerable<Retest> Asked(SendingFacts facts) =>
        facts.Looks.Where(l => l.Id == facts.Message.SubjectId || (facts.Message.Kind == MessageKind.RetestPrompt && !l.IsSecondLook && l.DueOn <= facts.Today));

    private static Envelope Address(SendingFacts facts, string stopLink)
    {
        var host = new Uri(facts.Practice.PublicAddress).Host;
        var recipient = facts.Student.RecipientOn(facts.Today)!;
        return new Envelope
        {
            MessageId = $"{facts.Message.StableName}@{host}",
            Follows = facts.Message.Kind == MessageKind.PlanDelivery || facts.Letter.Delivery is not { } delivery ? null : $"{delivery}@{host}",
            FromName = facts.Practice.Name,
            FromAddress = facts.Practice.MailFrom.Length > 0 ? facts.Practice.MailFrom : $"office@{host}",
            ToName = recipient.Name,
            ToAddress = recipient.Address,
            Date = facts.Now.ToDateTimeOffset(),
            StopLink = new Uri(stopLink),
        };
    }
}
