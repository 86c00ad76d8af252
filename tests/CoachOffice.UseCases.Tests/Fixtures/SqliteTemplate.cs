using CoachOffice.Data;
using Microsoft.Data.Sqlite;

namespace CoachOffice.UseCases.Tests.Fixtures;

public sealed class SqliteTemplate : ITemplate
{
    private readonly string _folder = Directory.CreateTempSubdirectory("coachoffice-tests-").FullName;
    private readonly Lazy<Task<string>> _empty;
    private readonly Lazy<Task<string>> _opened;
    private int _copies;

    public SqliteTemplate()
    {
        _empty = new(() => Make("empty.db", TemplateMaking.Migrate));
        _opened = new(async () =>
        {
            File.Copy(await _empty.Value, Path.Combine(_folder, "opened.db"));
            return await Make("opened.db", TemplateMaking.Open);
        });
    }

    public string? Missing => null;

    public async Task<ITestDatabase> Copy(bool opened)
    {
        var source = await (opened ? _opened : _empty).Value;
        var target = Path.Combine(_folder, $"copy-{Interlocked.Increment(ref _copies)}.db");
        File.Copy(source, target);
        return new TestFile(target);
    }

    public ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    private async Task<string> Make(string name, Func<OfficeDatabase, Task> make)
    {
        var path = Path.Combine(_folder, name);
        await make(OfficeDatabase.InFile(path));

        // Closing the last connection brings the write-ahead log into the file, so that one file is all there is to copy.
        Forget(path);
        return path;
    }

    private static void Forget(string path)
    {
        using var connection = new SqliteConnection($"Data Source={path}");
        SqliteConnection.ClearPool(connection);
    }

    private sealed class TestFile(string path) : ITestDatabase
    {
        public OfficeDatabase Database { get; } = OfficeDatabase.InFile(path);

        public ValueTask DisposeAsync()
        {
            Forget(path);
            foreach (var file in Directory.GetFiles(Path.GetDirectoryName(path)!, Path.GetFileName(path) + "*")) File.Delete(file);
            return ValueTask.CompletedTask;
        }
    }
}
