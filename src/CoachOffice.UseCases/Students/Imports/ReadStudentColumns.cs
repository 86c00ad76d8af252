using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Shows an open list's columns with what was said of them, here or for an earlier list.</summary>
public sealed class ReadStudentColumns(OfficeDb db, StudentFileDoor door)
{
    /// <summary>The columns, or why not.</summary>
    public async Task<Outcome<StudentColumnsView>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.FindOpen(id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<StudentColumnsView>.Refused(found.Refusals);
        var facts = door.Look(id).Value;
        var kept = await db.RememberedStudentColumns.AsNoTracking().SingleOrDefaultAsync(c => c.HeaderSha256 == facts.Layout.HeaderSha256, stop);
        var form = (file.Columns ?? kept?.Columns) is { } said ? StudentColumnsForm.Of(said) : StudentColumnGuess.Of(facts);
        return new StudentColumnsView
        {
            FileName = file.Name,
            Rows = facts.Rows,
            Columns = facts.Layout.Columns,
            Samples = [.. facts.Columns.Select(c => c.First)],
            Form = form,
            Open = new StudentColumnsCheck(facts).Of(form).Refusals,
            IsRemembered = kept is not null,
        };
    }
}
