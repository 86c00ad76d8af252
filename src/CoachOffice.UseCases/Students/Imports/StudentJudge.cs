using System.Globalization;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using NodaTime;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Holds a list's rows against everybody who is there, and against its own earlier rows.</summary>
internal sealed class StudentJudge(KnownPeople known, StudentColumns columns, LocalDate today)
{
    public JudgedRow Judge(ReadStudentRow row)
    {
        if (row.Details is not { } details) return new JudgedRow(row, RowFate.Refused, row.Refused!.Sentence);
        var (person, sentence) = known.Find(details, columns.SharedMail);
        if (person is null)
        {
            known.Add(new KnownPerson(null, row.Line, details));
            return new JudgedRow(row, RowFate.New, sentence);
        }

        if (person.Id is null) return new JudgedRow(row, RowFate.Known, string.Create(CultureInfo.InvariantCulture, $"Stands in line {person.Line} already: {sentence}."));
        return columns.WhenThere == WhenThere.FillEmpty ? Fill(row, details, person, sentence) : new JudgedRow(row, RowFate.Known, $"There already: {sentence}.") { There = person.Id };
    }

    private JudgedRow Fill(ReadStudentRow row, StudentDetails details, KnownPerson person, string sentence)
    {
        var (filled, fields) = StudentFilling.Fill(person.Details, details);
        if (fields.Count == 0) return new JudgedRow(row, RowFate.Known, $"There already: {sentence}. Nothing of it is empty.") { There = person.Id };
        if (StudentCheck.Of(filled, today) is [var wrong, ..]) return new JudgedRow(row, RowFate.Refused, $"There already: {sentence}. Filled in, it would not hold: {wrong.Sentence}") { There = person.Id };
        person.Details = filled;
        var gets = string.Join(", ", fields.Select(f => FieldWords.Of(f).ToLowerInvariant()));
        return new JudgedRow(row, RowFate.Fills, $"There already: {sentence}. Gets: {gets}.") { There = person.Id, Filled = filled, Fields = fields };
    }
}
