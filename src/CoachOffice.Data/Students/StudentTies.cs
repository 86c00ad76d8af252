using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace CoachOffice.Data.Students;

/// <summary>Every place that names a student, read from the mappings themselves, so that a new table is not forgotten.</summary>
public static class StudentTies
{
    /// <summary>All columns that point to a student, or hold a student's id without pointing.</summary>
    public static IReadOnlyList<StudentTie> All(OfficeDb db)
    {
        ArgumentNullException.ThrowIfNull(db);
        return [.. db.Model.GetEntityTypes().SelectMany(Of).Distinct().OrderBy(t => t.ToString(), StringComparer.Ordinal)];
    }

    /// <summary>Which of the students a query gives are named anywhere but in the tables left out.</summary>
    /// <param name="db">The database.</param>
    /// <param name="students">A query whose one column holds ids of students, with at most one parameter <c>{0}</c>.</param>
    /// <param name="parameter">Its value.</param>
    /// <param name="but">Tables that do not count.</param>
    /// <param name="stop">Ends the wait.</param>
    public static Task<List<Guid>> Named(OfficeDb db, string students, object parameter, IReadOnlyCollection<string> but, CancellationToken stop)
    {
        var asked = All(db).Where(t => !but.Contains(t.Table)).Select(t => $"""SELECT "{t.Column}" AS "Value" FROM "{t.Table}" WHERE "{t.Column}" IN ({students})""");
        return db.Database.SqlQueryRaw<Guid>(string.Join(" UNION ", asked), parameter).ToListAsync(stop);
    }

    /// <summary>Lets every row that names one student there name another, past the versions of what they belong to: nobody changed those.</summary>
    public static Task<int> Move(OfficeDb db, StudentTie tie, StudentId from, StudentId to, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(db);
        ArgumentNullException.ThrowIfNull(tie);

        // Names come from our own code, the ids are parameters.
        var sql = $$"""UPDATE "{{tie.Table}}" SET "{{tie.Column}}" = {0} WHERE "{{tie.Column}}" = {1}""";
        return db.Database.ExecuteSqlRawAsync(sql, [to.Value, from.Value], stop);
    }

    private static IEnumerable<StudentTie> Of(IEntityType type)
    {
        var pointing = type.GetForeignKeys().Where(k => k.PrincipalEntityType.ClrType == typeof(Student)).SelectMany(k => k.Properties);
        var holding = type.GetProperties().Where(p => (Nullable.GetUnderlyingType(p.ClrType) ?? p.ClrType) == typeof(StudentId) && !(type.ClrType == typeof(Student) && p.IsPrimaryKey()));
        return pointing.Concat(holding).Select(p => new StudentTie(type.GetTableName()!, p.GetColumnName()));
    }
}
