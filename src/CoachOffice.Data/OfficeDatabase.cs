using CoachOffice.Data.Access;
using CoachOffice.Data.PostgreSql;
using CoachOffice.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;

namespace CoachOffice.Data;

/// <summary>Which database, and how to reach it.</summary>
/// <param name="Provider">The kind.</param>
/// <param name="ConnectionString">As the provider's client reads it.</param>
public sealed record OfficeDatabase(DatabaseProvider Provider, string ConnectionString)
{
    /// <summary>From the section <c>Office:Database</c> (<c>Provider</c>, <c>ConnectionString</c>); without one an SQLite file in the data folder.</summary>
    /// <exception cref="InvalidOperationException">The provider is unknown, or PostgreSQL has no connection string.</exception>
    public static OfficeDatabase From(IConfiguration configuration, DataFolder folder)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(folder);
        var section = configuration.GetSection("Office:Database");
        var word = section["Provider"] ?? nameof(DatabaseProvider.Sqlite);
        if (!Enum.TryParse<DatabaseProvider>(word, ignoreCase: true, out var provider) || !Enum.IsDefined(provider))
            throw new InvalidOperationException($"Office:Database:Provider is '{word}'; write Sqlite or PostgreSql.");
        var given = section["ConnectionString"];
        if (!string.IsNullOrWhiteSpace(given)) return new OfficeDatabase(provider, given);
        return provider == DatabaseProvider.Sqlite
            ? InFile(folder.Inside("office.db"))
            : throw new InvalidOperationException("Office:Database:ConnectionString is missing; PostgreSQL needs one such as Host=localhost;Database=office;Username=office.");
    }

    /// <summary>An SQLite file.</summary>
    public static OfficeDatabase InFile(string path) => new(DatabaseProvider.Sqlite, $"Data Source={path}");

    /// <summary>Sets a context's options up for this database.</summary>
    public void Configure(DbContextOptionsBuilder options)
    {
        ArgumentNullException.ThrowIfNull(options);
        options.AddInterceptors(VersionStep.Instance);
        if (Provider == DatabaseProvider.Sqlite) SqliteSetUp.Configure(options, ConnectionString);
        else PostgreSqlSetUp.Configure(options, ConnectionString);
    }

    /// <summary>Closes the connections an SQLite file's pool still holds, so that the file can be removed.</summary>
    public void LetGo()
    {
        if (Provider == DatabaseProvider.Sqlite) SqliteSetUp.LetGo(ConnectionString);
    }

    /// <summary>Options for a context of its own, e.g. in a tool or test.</summary>
    public DbContextOptions<OfficeDb> Options()
    {
        var options = new DbContextOptionsBuilder<OfficeDb>().UseApplicationServiceProvider(AccountTables.Settings);
        Configure(options);
        return options.Options;
    }
}
