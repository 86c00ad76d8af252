using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.Bounces;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;
using NodaTime;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>What may be sent to a student, and how it reaches them.</summary>
public sealed class ReachModel(ReadReach read, AllowMessages allow, GuardianWords guardian, ForgetBounces forget, KeepContact keep) : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty]
    public string? What { get; set; }

    public ReachView View { get; private set; } = null!;

    public DateTimeZone Zone { get; private set; } = DateTimeZone.Utc;

    public string Address => $"/students/{Id}/messages";

    [BindProperty]
    public ContactFields Contact { get; set; } = new();

    public async Task<IActionResult> OnGetAsync()
    {
        if (!await Look()) return NotFound();
        Contact = ContactFields.Of(View.Student.Contact);
        return Page();
    }

    public async Task<IActionResult> OnPostContactAsync()
    {
        var typed = Contact.Read();
        return await After(typed.TryGet(out var wishes) ? await keep.For(StudentId.From(Id), wishes, Actor) : Outcome<StudentId>.Refused(typed.Refusals), "Messages reach them that way from now on.");
    }

    public async Task<IActionResult> OnPostAllowAsync() => Terms.TryParse<MessagePurpose>(What, out var purpose)
        ? await After(await allow.For(StudentId.From(Id), purpose, Actor), "They are sent again from now on. What was left out meanwhile stays left out.")
        : NotFound();

    public async Task<IActionResult> OnPostWithdrawAsync() => await After(await guardian.Withdraws.Of(StudentId.From(Id), Actor), "Nothing goes out about this student any more.");

    public async Task<IActionResult> OnPostAgreeAsync() => await After(await guardian.Returns.For(StudentId.From(Id), Actor), "Messages go to the guardian again from now on.");

    public async Task<IActionResult> OnPostRightAsync()
    {
        var forgotten = await forget.Of(StudentId.From(Id), Actor);
        return await After(forgotten.Succeeded ? StudentId.From(Id) : Outcome<StudentId>.Refused(forgotten.Refusals), "Mail goes to this address again. What waits under Follow-ups is sent when you say so.");
    }

    private async Task<IActionResult> After(Outcome<StudentId> outcome, string sentence)
    {
        if (outcome.Succeeded) return Done(Address, sentence);
        if (!await Look()) return NotFound();
        if (Contact.By is null) Contact = ContactFields.Of(View.Student.Contact);
        return Refuse(outcome.Refusals, "Contact.");
    }

    private async Task<bool> Look()
    {
        if (await read.Of(StudentId.From(Id)) is not { } view) return false;
        (View, Zone) = (view, view.Zone);
        return true;
    }
}
