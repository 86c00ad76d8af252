using CoachOffice.UseCases.Students;
using CoachOffice.Web.Features.Students.Imports;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students;

/// <summary>All students as a file.</summary>
[Authorize(Policy = OfficePolicies.Own)]
public sealed class ExportModel(ExportStudents export) : OfficePage
{
    public void OnGet()
    {
        // The page says what the file is; it is made when asked for.
    }

    public async Task<IActionResult> OnPostAsync()
    {
        var made = await export.All(Actor);
        return made.TryGet(out var bytes) ? File(bytes, CsvAnswer.Type, "students.csv") : Refuse(made.Refusals, "");
    }
}
