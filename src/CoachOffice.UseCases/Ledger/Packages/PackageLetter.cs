using System.Globalization;
using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime.Text;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Tells whom a package was bought for that it ends, or that one lesson is left in it. To the guardian of a minor.</summary>
public sealed class PackageLetter(OfficeDb db, PackageShelf shelf, PrivateLinks links, Letters letters) : IOfficeLetter
{
    /// <summary>Occasion of the letter about the last lesson; the other one's is the last day.</summary>
    public const string LastLesson = "last";

    /// <inheritdoc/>
    public IReadOnlyList<MessageKind> Kinds { get; } = [MessageKind.PackageEnding];

    /// <inheritdoc/>
    public bool MayRepeat => true;

    /// <inheritdoc/>
    public async Task<SendingVerdict> MayGo(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var package = await Package(facts.Message, stop);
        var credits = await shelf.CreditsOf(package, stop);
        var over = package.ClosedAt is not null || package.HasEndedBy(facts.Today) || credits.IsEnded || credits.Free == 0;
        if (over || (IsAboutLast(facts.Message) && credits.Free != 1)) return new SendingVerdict.Never("package-over");
        if (!IsAboutLast(facts.Message) && !facts.Message.OnceKey.EndsWith($"|{(package.ValidUntil is { } day ? LocalDatePattern.Iso.Format(day) : "")}", StringComparison.Ordinal)) return new SendingVerdict.Never("package-over");
        return facts.StudentsMail is null ? new SendingVerdict.Never("no-mail") : new SendingVerdict.Go();
    }

    /// <inheritdoc/>
    public Task<MailRecipient?> Recipient(OfficeFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return Task.FromResult(facts.StudentsMail);
    }

    /// <inheritdoc/>
    public async Task<MimeMessage> Write(OfficeFacts facts, MailRecipient recipient, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(recipient);
        var (package, student) = (await Package(facts.Message, stop), facts.Student!);
        var free = (await shelf.CreditsOf(package, stop)).Free;
        var said = new PackageLetterFacts
        {
            Greeting = CleanText.Line(recipient.IsGuardian ? recipient.Name : student.GivenName),
            Student = CleanText.Line(student.GivenName),
            ForGuardian = recipient.IsGuardian,
            OpensLessons = true,
            StopLink = facts.StopLink?.ToString() ?? "",
            Practice = CleanText.Line(facts.Practice.Name),
            Package = CleanText.Line(package.Name),
            LastDay = IsAboutLast(facts.Message) || package.ValidUntil is not { } last ? "" : last.ToString("dddd d MMMM", CultureInfo.InvariantCulture),
            Left = free == 1 ? "One lesson" : $"{free} lessons",
            LeftCount = free,
            Link = $"{facts.Practice.PublicAddress}/v/{links.MintVisits(student.Id, IssueVisitLink.Life)}",
        };
        return MailForm.Of(letters.Render(facts.Message.Kind, said, facts.Words), OfficeEnvelopes.For(facts, recipient));
    }

    /// <inheritdoc/>
    public Task<string> Addressee(Message message, CancellationToken stop) => Task.FromResult("");

    private static bool IsAboutLast(Message message) => message.OnceKey.EndsWith($"|{LastLesson}", StringComparison.Ordinal);

    private Task<Package> Package(Message message, CancellationToken stop)
    {
        var id = PackageId.From(message.SubjectId!.Value);
        return db.Packages.AsNoTracking().SingleAsync(p => p.Id == id, stop);
    }
}
