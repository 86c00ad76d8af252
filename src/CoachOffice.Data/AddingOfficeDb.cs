using CoachOffice.Data.Access;
using CoachOffice.Data.Bookings;
using CoachOffice.Data.Bulk;
using CoachOffice.Data.FollowUps;
using CoachOffice.Data.Media;
using CoachOffice.Data.PostgreSql;
using CoachOffice.Data.Safekeeping;
using CoachOffice.Data.Sqlite;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Data;

/// <summary>Registers the database.</summary>
public static class AddingOfficeDb
{
    /// <summary>The context, what differs by provider, and <see cref="PrepareDatabase"/>.</summary>
    public static IServiceCollection AddOfficeDb(this IServiceCollection services, OfficeDatabase database, DataFolder folder)
    {
        ArgumentNullException.ThrowIfNull(database);
        services.AddSingleton(database).AddSingleton(folder);
        services.Configure<IdentityOptions>(AccountTables.Settle);
        services.AddDbContextPool<OfficeDb>(database.Configure);
        services.AddScoped(p => new ForgetThePast(p.GetRequiredService<IDatabaseKeeper>()));
        services.AddScoped(p => new SchemaState(p.GetRequiredService<OfficeDb>(), p.GetRequiredService<IDatabaseKeeper>()));
        services.AddScoped(p => new PrepareDatabase(p.GetRequiredService<OfficeDb>(), p.GetRequiredService<IDatabaseKeeper>()));
        services.AddScoped(p => new WriteBackup(p.GetRequiredService<OfficeDb>(), p.GetRequiredService<ISnapshot>(), p.GetRequiredService<MediaFolder>(), folder, p.GetRequiredService<TimeProvider>()));
        return database.Provider == DatabaseProvider.Sqlite
            ? services.AddScoped<IOutbox, SqliteOutbox>().AddScoped<IManyRows, SqliteManyRows>().AddScoped<ITimeLocks, SqliteTimeLocks>().AddScoped<IDatabaseKeeper, SqliteKeeper>().AddScoped<ISnapshot, SqliteSnapshot>()
            : services.AddScoped<IOutbox, PostgreSqlOutbox>().AddScoped<IManyRows, PostgreSqlManyRows>().AddScoped<ITimeLocks, PostgreSqlTimeLocks>().AddScoped<IDatabaseKeeper, PostgreSqlKeeper>().AddScoped<ISnapshot, PostgreSqlSnapshot>();
    }
}
