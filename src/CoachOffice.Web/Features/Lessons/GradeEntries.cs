using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Lessons;

/// <summary>Grades what stands in the fields of a sheet that is being typed.</summary>
internal sealed class GradeEntries(Rulebooks books, GradeReadings grade, ReadPractice practice)
{
    // More than a few would be a second sheet.
    private const int MostNext = 3;

    public async Task<LiveGrades> Of(SheetInput sheet)
    {
        var book = (await books.InForce()).Book;
        var taken = new List<TakenReading>();
        var wrong = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in sheet.Entries())
        {
            var read = ReadingEntry.Take(entry, book);
            if (read.TryGet(out var readings)) taken.AddRange(readings);
            else wrong[entry.Measure] = read.Refusals[0].Sentence;
        }

        var club = Terms.TryParse<Club>(sheet.Club, out var named) ? named : Club.Driver;
        var live = await grade.Live(StudentId.From(sheet.StudentId), club, taken);
        return new LiveGrades(live, live.Findings.Where(f => !f.IsDerived).ToDictionary(f => f.Measure.Id.Value, StringComparer.Ordinal), wrong, UnitText.Of(await practice.Now()))
        {
            Next = [.. live.Next.Take(MostNext).Select(n => new NextMeasure(n.Measure, book.Find(MeasureId.From(n.Measure))!.Name, n.Because))],
        };
    }
}
