using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Students;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>One booking: who comes, whether they came, moving it, cancelling it.</summary>
public sealed class BookingModel(BookingPage read, ListBookingChoices choices, FindStudents find, BookingVerbs verbs) : OfficePage
{
    internal BookingView View { get; private set; } = null!;

    internal BookingChoices Choices { get; private set; } = null!;

    /// <summary>Students found for a place; null while nobody searched.</summary>
    internal StudentList? Found { get; private set; }

    [BindProperty]
    public WhereInput Input { get; set; } = new();

    [BindProperty]
    public string? Note { get; set; }

    [BindProperty]
    public string? Text { get; set; }

    internal bool MayTeach => Actor.MayTeach;

    /// <summary>What it costs when the student cancels a place now, said before it happens.</summary>
    internal string CostOf(SeatId seat) => CancelWords.Of(View.Costs[seat], View.Currency, View.Zone);

    public async Task<IActionResult> OnGetAsync(Guid id)
    {
        if (!await Load(id)) return NotFound();
        Input = WhereInput.Of(View);
        Note = View.Note;
        return Page();
    }

    public async Task<IActionResult> OnPostFindAsync(Guid id)
    {
        if (!await Load(id)) return NotFound();
        (Input, Note) = (WhereInput.Of(View), View.Note);
        Found = await find.Matching((Text ?? "").Trim(), 1, archived: false);
        return Page();
    }

    public Task<IActionResult> OnPostAddAsync(Guid id, Guid student) => Answer(id, verbs.Add(Key(id), StudentId.From(student), Actor), "The student has a place in it.");

    public Task<IActionResult> OnPostMarkAsync(Guid id, Guid seat, string? came) =>
        Answer(id, verbs.Mark(Key(id), SeatId.From(seat), came switch { "yes" => true, "no" => false, _ => null }, Actor), came switch { "yes" => "Marked: came.", "no" => "Marked: did not come.", _ => "The mark is taken back." });

    public Task<IActionResult> OnPostReleaseAsync(Guid id, Guid seat, string? by) => Answer(id, verbs.Release(Key(id), SeatId.From(seat), Reason(by), Actor), "The place is cancelled.");

    public Task<IActionResult> OnPostCancelAsync(Guid id, int version, string? by) =>
        Answer(id, verbs.Cancel(Key(id), version, Reason(by), Actor), "The booking is cancelled.", $"{CalendarLinks.To(Key(id))}?handler=back");

    /// <summary>This lesson of a row and all after it.</summary>
    public async Task<IActionResult> OnPostRestAsync(Guid id, string? by)
    {
        var done = await verbs.CancelRest(Key(id), Reason(by), Actor);
        return done.TryGet(out var count) ? Done(CalendarLinks.To(Key(id)), count == 1 ? "One lesson is cancelled." : $"{count} lessons are cancelled.") : await Again(id, done.Refusals);
    }

    public Task<IActionResult> OnPostBackAsync(Guid id) => Answer(id, verbs.TakeBack(Key(id), Actor), "It takes place after all.");

    public async Task<IActionResult> OnPostMoveAsync(Guid id, int version)
    {
        var form = Input.Read();
        return form.TryGet(out var wanted)
            ? await Answer(id, verbs.Move(Key(id), version, wanted, Actor), "The booking is moved.")
            : await Again(id, form.Refusals);
    }

    public Task<IActionResult> OnPostNoteAsync(Guid id, int version) => Answer(id, verbs.Write(Key(id), version, Note ?? "", Actor), "The note is kept.");

    private static BookingId Key(Guid id) => BookingId.From(id);

    private static CancelReason Reason(string? by) => by == "student" ? CancelReason.ByStudent : CancelReason.ByPractice;

    private async Task<IActionResult> Answer(Guid id, Task<Outcome<BookingId>> deed, string said, string? undo = null)
    {
        var done = await deed;
        return done.Succeeded ? Done(CalendarLinks.To(done.Value), said, undo) : await Again(id, done.Refusals);
    }

    private async Task<IActionResult> Again(Guid id, IReadOnlyList<Refusal> refusals)
    {
        if (!await Load(id)) return NotFound();
        if (Input.Day is null) Input = WhereInput.Of(View);
        Note ??= View.Note;
        return Refuse(refusals);
    }

    private async Task<bool> Load(Guid id)
    {
        if (id == Guid.Empty || await read.Of(BookingId.From(id)) is not { } view) return false;
        (View, Choices) = (view, await choices.Now());
        return true;
    }
}
