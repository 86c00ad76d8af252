using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.Web.Shell;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Lessons.Imports;

/// <summary>A page of one file at a student.</summary>
public abstract class ImportPage : OfficePage
{
    [BindProperty(SupportsGet = true)]
    public Guid Id { get; set; }

    [BindProperty(SupportsGet = true, Name = "file")]
    public Guid FileId { get; set; }

    internal string Here => $"/students/{Id}/radar/{FileId}";

    internal string Files => $"/students/{Id}/radar";

    protected StudentId Student => StudentId.From(Id);
}
