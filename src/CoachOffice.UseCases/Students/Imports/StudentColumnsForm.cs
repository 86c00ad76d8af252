using CoachOffice.Domain;
using CoachOffice.Domain.Students.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>The form in which a person says what the columns of a list hold; empty is not said yet.</summary>
public sealed record StudentColumnsForm
{
    /// <summary>Word of a field, by the column's index; a column that is not named is left out.</summary>
    public IReadOnlyDictionary<int, string> Fields { get; init; } = new Dictionary<int, string>();

    public string NameOrder { get; init; } = "";

    public string DayOrder { get; init; } = "";

    public string WhenThere { get; init; } = Terms.Of(Domain.Students.Imports.WhenThere.Skip);

    public string SharedMail { get; init; } = Terms.Of(Domain.Students.Imports.SharedMail.AnotherPerson);

    /// <summary>The form filled in as it was answered before.</summary>
    public static StudentColumnsForm Of(StudentColumns columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return new StudentColumnsForm
        {
            Fields = columns.Columns.ToDictionary(c => c.Column, c => Terms.Of(c.Field)),
            NameOrder = columns.NameOrder is { } name ? Terms.Of(name) : "",
            DayOrder = columns.DayOrder is { } day ? Terms.Of(day) : "",
            WhenThere = Terms.Of(columns.WhenThere),
            SharedMail = Terms.Of(columns.SharedMail),
        };
    }
}
