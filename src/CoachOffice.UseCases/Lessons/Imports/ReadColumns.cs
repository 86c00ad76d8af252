using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime.Text;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Shows an open file's columns with what was said of them, here or for an earlier file.</summary>
public sealed class ReadColumns(OfficeDb db, DeviceFileDoor door, DeviceFileStore store)
{
    /// <summary>The columns, or why not.</summary>
    public async Task<Outcome<ColumnsView>> Of(StudentId student, Guid id, Actor actor, CancellationToken stop = default)
    {
        var found = await door.FindOpen(student, id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<ColumnsView>.Refused(found.Refusals);
        var whose = await door.Whose(student, stop);
        if (!whose.TryGet(out var person)) return Outcome<ColumnsView>.Refused(whose.Refusals);
        var facts = FileFacts.Of(store.PathOf(id), SheetKind.Swings).Value;
        var book = await door.Book(stop);
        var kept = await db.RememberedColumns.AsNoTracking().SingleOrDefaultAsync(c => c.HeaderSha256 == facts.Layout.HeaderSha256, stop);
        var form = FormOf(file.Answers) ?? (kept is null ? new ColumnGuess(facts, book).Form() : Remembered(kept.Mapping, new ColumnGuess(facts, book)));
        return new ColumnsView
        {
            FileName = file.Name,
            StudentName = person.FullName,
            Hand = person.Hand,
            Rows = facts.Rows,
            Columns = facts.Layout.Columns,
            Samples = [.. facts.Columns.Select(c => c.First)],
            Measures = DeviceMeasures.Of(book),
            Words = [.. facts.Columns.Select(c => c.HasFewWords ? c.Words.ToList() : [])],
            Form = form,
            Open = new ColumnsCheck(facts, book, await door.Today(stop)).Of(form, saidBefore: file.Answers is null).Refusals,
            IsRemembered = kept is not null,
        };
    }

    // A file may name clubs that the one before did not.
    private static ColumnsForm Remembered(ColumnMapping mapping, ColumnGuess guess)
    {
        var form = ColumnsForm.Of(mapping);
        var clubs = guess.Clubs(form.ClubColumn);
        foreach (var (word, club) in form.Clubs) clubs[word] = club;
        return form with { Clubs = clubs };
    }

    private static ColumnsForm? FormOf(FileAnswers? answers) => answers is null ? null : ColumnsForm.Of(answers.Mapping) with
    {
        Day = answers.Day is { } day ? LocalDatePattern.Iso.Format(day) : "",
        Club = answers.Club is { } club ? Terms.Of(club) : "",
    };
}
