using CoachOffice.Data;
using CoachOffice.UseCases.Tests.Demo;

namespace CoachOffice.UseCases.Tests.Database;

/// <summary>The demo practice in a file of its own, changed behind the office's back. It goes with the demo's folder.</summary>
internal sealed class SqliteOfficeCopy(DemoOffice demo)
{
    private static int _count;

    public async Task<OfficeDatabase> With(Func<OfficeDb, Task> change)
    {
        var file = Path.Combine(demo.Demo.Folder, $"changed-{Interlocked.Increment(ref _count)}.db");
        await demo.Demo.Read(async db =>
        {
            await db.Run($"VACUUM INTO '{file}'", default);
            return file;
        });
        var database = OfficeDatabase.InFile(file);
        await using (var db = new OfficeDb(database.Options())) await change(db);
        database.LetGo();
        return database;
    }
}
