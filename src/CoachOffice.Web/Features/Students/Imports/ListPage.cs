using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Students.Imports;

/// <summary>A page of one list of students.</summary>
public abstract class ListPage : OfficePage
{
    [BindProperty(SupportsGet = true, Name = "file")]
    public Guid FileId { get; set; }

    internal string Here => OfficeLinks.StudentList(FileId);
}
