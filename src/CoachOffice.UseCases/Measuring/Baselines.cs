using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Lessons;
using CoachOffice.UseCases.Plans;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Finds what a re-test is compared with.</summary>
public sealed class Baselines(OfficeDb db, PlanBooks books)
{
    /// <summary>The baseline of one fault of a plan.</summary>
    public async Task<Baseline> Of(DraftId draft, FaultId fault, CancellationToken stop = default)
    {
        var book = await books.Of(draft, stop);
        var input = await db.StoredDrafts.Where(d => d.Id == draft).Select(d => d.InputJson).SingleAsync(stop);
        var facts = LessonReader.Read("input.json", Encoding.UTF8.GetBytes(input), book).Value;
        var finding = LessonGrading.Grade(book, facts).Single(f => f.Measure.Id == fault.Measure);
        return new Baseline
        {
            Book = book,
            Facts = facts,
            Measure = finding.Measure,
            Before = facts.Readings.FirstOrDefault(r => r.Measure == fault.Measure) ?? new MeasuredValue { Measure = fault.Measure, Value = finding.Value, Readings = finding.Readings },
            Range = finding.Range ?? new Limits(null, null),
        };
    }
}
