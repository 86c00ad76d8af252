using CoachOffice.Benchmarks.Office;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons.Imports;

namespace CoachOffice.Benchmarks.Radar;

/// <summary>A new office with one student, in a folder that goes with it.</summary>
internal sealed class SwingPlace : IAsyncDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("coachoffice-swings-");
    private readonly OpenOffice _office;

    private SwingPlace() => _office = new OpenOffice(_folder.FullName);

    public string File => Path.Combine(_folder.FullName, "office.db");

    public StudentId Student { get; private set; }

    public Actor Coach { get; private set; } = Actor.Clock;

    public static async Task<SwingPlace> Make()
    {
        var place = new SwingPlace();
        var first = new FirstPeople(place._office);
        await first.Open();
        var served = await first.Serve("Hester", approve: false);
        (place.Student, place.Coach) = (served.Student, first.Owner);
        return place;
    }

    public async Task<Guid> Tells(byte[] content)
    {
        var file = await _office.Must((OpenDeviceFile open) => open.For(Student, "swings.csv", new MemoryStream(content), Coach));
        var view = await _office.Must((ReadColumns read) => read.Of(Student, file.Id, Coach));
        var form = view.Form with { Columns = [.. view.Form.Columns.Select(c => c with { Plus = "ours" })] };
        await _office.Must((SayColumns say) => say.Of(Student, file.Id, form, Coach));
        return file.Id;
    }

    public Task<DeviceFileView> Looks(Guid file) => _office.Must((PreviewDeviceFile look) => look.Of(Student, file, Coach));

    public Task Imports(Guid file) => MostWhileImporting(file, measure: false);

    /// <summary>Imports, and gives the most memory that was alive at any look.</summary>
    public Task<long> MostWhileImporting(Guid file) => MostWhileImporting(file, measure: true);

    private async Task<long> MostWhileImporting(Guid file, bool measure)
    {
        await _office.Must((BeginImport begin) => begin.Of(new ImportOrder(Student, file, new Dictionary<string, LessonId>(), Coach)));
        long most = 0;
        ImportProgress progress;
        while ((progress = await _office.Must((WatchImport watch) => watch.Of(Student, file, Coach))).State == ImportState.Running)
        {
            await Task.Delay(measure ? 100 : 10);
            if (measure) most = Math.Max(most, GC.GetTotalMemory(forceFullCollection: true));
        }

        return progress.State == ImportState.Done ? most : throw new InvalidOperationException($"The import ended {progress.State}.");
    }

    public async ValueTask DisposeAsync()
    {
        await _office.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        _folder.Delete(true);
    }
}
