using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Sends words with invented facts to the address of whoever asks for it, at once and to nobody else. It is no message of the office: nothing is kept of it but that it was asked for.</summary>
public sealed class SendTestLetter(OfficeDb db, MailDoors doors, PreviewLetter preview, CheckWording check, RuleDoor door)
{
    /// <summary>Where it went, or why not.</summary>
    public async Task<Outcome<string>> Now(MessageKind kind, LetterWords? words, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("send a letter to try it");
        if (words is not null && check.Of(kind, words) is { Count: > 0 } wrong) return Outcome<string>.Refused(wrong);
        var account = actor.Account is { } id ? await db.Users.AsNoTracking().SingleOrDefaultAsync(u => u.Id == id.Value, stop) : null;
        if (account?.Email is not { Length: > 0 } address) return new Refusal("test-address", "Your account has no mail address.");
        var practice = await db.Practices.AsNoTracking().SingleAsync(stop);
        if (doors.LeavesBySmtp(practice) && practice.MailFrom.Length == 0) return new Refusal("no-sender", Problems.InWords("no-sender"));
        var letter = preview.Render(kind, LetterExamples.Of(kind)[0], words);
        var host = new Uri(practice.PublicAddress).Host;
        var mail = MailForm.Of(letter with { Subject = $"Try-out: {letter.Subject}" }, new Envelope
        {
            MessageId = $"try-out.{door.NewId():N}@{host}",
            FromName = practice.Name,
            FromAddress = practice.MailFrom.Length > 0 ? practice.MailFrom : $"office@{host}",
            ToName = account.DisplayName,
            ToAddress = address,
            Date = door.Now.ToDateTimeOffset(),
        });
        doors.Seal(practice, mail);
        var handed = await doors.For(practice).HandOver(mail, stop);
        if (handed.Result != HandoverResult.Taken) return new Refusal("test-failed", $"It did not go. {Problems.InWords(handed.Problem ?? "unknown")}");
        return doors.LeavesBySmtp(practice) ? $"Sent to {address}." : "Written into the mail folder; from this practice nothing goes out by a mail server.";
    }
}
