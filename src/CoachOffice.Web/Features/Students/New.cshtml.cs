using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students;

public sealed class NewModel(RegisterStudent register, ReadPractice practice, INewIds ids) : StudentFormPage
{
    public async Task OnGetAsync()
    {
        var imperial = (await practice.Now())?.Units == UnitSystem.Imperial;
        Input = new StudentForm { Id = ids.Next(), Imperial = imperial };
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var read = StudentFormReader.Read(Input);
        if (!read.TryGet(out var details)) return Refuse(read.Refusals);
        var registered = await register.From(StudentId.From(Input.Id), details, Actor);
        return registered.TryGet(out var id) ? Done($"/students/{id.Value}", $"{details.GivenName} is added.") : Refuse(registered.Refusals);
    }
}
