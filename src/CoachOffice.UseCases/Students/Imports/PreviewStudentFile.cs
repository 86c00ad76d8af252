using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using NodaTime.Text;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Reads an open list without keeping anything: who would be added, who is there already, and which rows are refused and why.</summary>
public sealed class PreviewStudentFile(StudentFileDoor door)
{
    /// <summary>A page of the list as it would be brought in; refused while its columns were not told.</summary>
    public async Task<Outcome<StudentFileView>> Of(Guid id, RowFate? fate, int page, Actor actor, CancellationToken stop = default)
    {
        var found = await door.FindOpen(id, actor, stop);
        if (!found.TryGet(out var file)) return Outcome<StudentFileView>.Refused(found.Refusals);
        if (file.Columns is null) return new Refusal("columns-unsaid", "Say first what the columns hold.");
        var all = await door.Judge(file, stop);
        var shown = fate is null ? all : [.. all.Where(r => r.Fate == fate)];
        var pages = Math.Max(1, (shown.Count + StudentFileView.PageSize - 1) / StudentFileView.PageSize);
        var number = Math.Clamp(page, 1, pages);
        return new StudentFileView
        {
            File = file,
            Would = CountOf(all),
            Rows = [.. shown.Skip((number - 1) * StudentFileView.PageSize).Take(StudentFileView.PageSize).Select(Shown)],
            Fate = fate,
            Page = number,
            Pages = pages,
        };
    }

    internal static StudentFileOutcome CountOf(IReadOnlyList<JudgedRow> rows) =>
        new(rows.Count(r => r.Fate == RowFate.New), rows.Count(r => r.Fate == RowFate.Fills), rows.Count(r => r.Fate == RowFate.Known), rows.Count(r => r.Fate == RowFate.Refused));

    private static PreviewedRow Shown(JudgedRow row) => new(row.Row.Line, row.Fate, row.Row.Name, row.Row.Details is { } d ? FactsOf(d) : "", row.Sentence, row.There);

    private static string FactsOf(StudentDetails d) => string.Join(", ", new[]
    {
        d.BirthDate is { } born ? $"born {LocalDatePattern.Iso.Format(born)}" : "", d.Email, d.Phone, d.Guardian is { } g ? $"guardian {g.Name} {g.Email}" : "",
    }.Where(fact => fact.Length > 0));
}
