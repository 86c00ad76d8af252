using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>The refused rows of a list as a list of their own, each with its line and reason, so that they can be mended and brought again.</summary>
public sealed class RefusedStudentRows(StudentFileDoor door, StudentFileStore store)
{
    /// <summary>The bytes of a CSV file; while the list is open or a day after it was brought in.</summary>
    public async Task<Outcome<byte[]>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.Find(id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<byte[]>.Refused(found.Refusals);
        if (file.Columns is null || file.UndoneAt is not null || !store.Has(id)) return StudentFileDoor.NotFound;

        // Brought in or not, the same rows are refused: what was added or filled is there now.
        var rows = (await door.Judge(file, stop)).Where(r => r.Fate == RowFate.Refused);
        using var sheet = new CsvSheet();
        var width = door.Look(id).Value.Layout.Columns;
        sheet.Row([.. width.Select(c => c.Name), "Line", "Why refused"]);
        foreach (var row in rows)
            sheet.Row([.. Enumerable.Range(0, width.Count).Select(i => i < row.Row.Cells.Count ? CsvSheet.Plain(row.Row.Cells[i]) : ""), row.Row.Line.ToString(CultureInfo.InvariantCulture), row.Sentence]);
        return sheet.Bytes();
    }
}
