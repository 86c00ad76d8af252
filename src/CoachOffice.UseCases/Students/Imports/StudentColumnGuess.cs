using CoachOffice.Domain;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Lessons.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>A first filling of the form, from the plain names of the columns; a person sees it before anything is read.</summary>
internal static class StudentColumnGuess
{
    public static StudentColumnsForm Of(FileFacts facts)
    {
        var found = facts.Layout.Columns.Select(c => (c.Index, Field: FieldWords.Find(c.Plain))).Where(c => c.Field is not null).ToList();
        var parts = found.Any(c => c.Field == StudentField.GivenName);
        var fields = found.Where(c => !(parts && c.Field == StudentField.FullName)).GroupBy(c => c.Field).ToDictionary(g => g.First().Index, g => Terms.Of(g.Key!.Value));
        var whole = fields.Where(f => f.Value == Terms.Of(StudentField.FullName)).Select(f => (int?)f.Key).FirstOrDefault();
        return new StudentColumnsForm { Fields = fields, NameOrder = whole is { } at && AllHaveCommas(facts.Columns[at]) ? Terms.Of(NameOrder.FamilyFirst) : "" };
    }

    // "Berg, Anna" can be read one way only; "Anna Berg" is asked about.
    private static bool AllHaveCommas(ColumnFacts column) => column.First.Count > 0 && column.First.All(name => name.Contains(',', StringComparison.Ordinal));
}
