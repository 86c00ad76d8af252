namespace CoachOffice.Data;

/// <summary>Which kind of database holds the practice.</summary>
public enum DatabaseProvider
{
    Sqlite,
    PostgreSql,
}
