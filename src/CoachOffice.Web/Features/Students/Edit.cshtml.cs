using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students;

public sealed class EditModel(ChangeStudent change, ReadStudent read, ReadPractice practice) : StudentFormPage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    /// <summary>The name as saved.</summary>
    public string Name { get; private set; } = "";

    public async Task<IActionResult> OnGetAsync()
    {
        var saved = await Saved();
        if (saved is null) return NotFound();
        Input = saved;
        return Page();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var entered = StudentFormReader.Read(Input);
        var changed = entered.TryGet(out var details) ? await change.To(StudentId.From(Id), Input.Version, details, Actor) : null;
        if (changed?.Succeeded == true) return Done($"/students/{Id}", "Saved.");
        if (await Saved() is not { } saved) return NotFound();
        var refusals = changed?.Refusals ?? entered.Refusals;
        if (refusals.Any(r => r.Code == Clash.Code)) TakeNewVersion(saved.Version);
        return Refuse(refusals);
    }

    /// <summary>The refusals show both values of every field; the next save is made knowing them.</summary>
    private void TakeNewVersion(int version)
    {
        Input.Version = version;
        ModelState.Remove("Input.Version");
    }

    private async Task<StudentForm?> Saved()
    {
        var student = await read.Of(StudentId.From(Id));
        if (student is null || student.ErasedAt is not null) return null;
        Name = student.FullName;
        var imperial = (await practice.Now())?.Units == UnitSystem.Imperial;
        return StudentFormFiller.From(student, Input.Version > 0 ? Input.Imperial : imperial);
    }
}
