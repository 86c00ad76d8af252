using CoachOffice.Data.Safekeeping;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Media;
using CoachOffice.UseCases.Safekeeping;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Tests.Safekeeping;

/// <summary>An office with a plan and a still, and where its backups stand.</summary>
internal sealed class BackedUp(TestOffice office, Scene scene)
{
    public TestOffice Office { get; } = office;

    public Scene Scene { get; } = scene;

    public string Shelf => Office.Services.GetRequiredService<BackupPlace>().Folder;

    public IReadOnlyList<string> Backups => new BackupShelf(Shelf, Office.Time).Backups();

    public static async Task<BackedUp> Begin(OfficeFixture fixture, BackupSettings? settings = null)
    {
        var office = await fixture.Another(opened: true, s => s.AddSingleton(settings ?? new BackupSettings { Keep = 2 }));
        var scene = await Scene.Approved(office);
        await office.Must((AddStill add) => add.To(scene.Lesson, new StillShows(View.FaceOn, Moment.Top, 1), new MemoryStream(APicture.RedAndBlue(320, 200)), office.Coach));
        return new BackedUp(office, scene);
    }

    public Task<SafetyCopy> Make() => Office.Must((MakeBackup make) => make.Now(Office.Owner));

    public Task<SafetyCopy?> Due() => Office.Do((MakeBackup make) => make.Due(default));

    public List<string> MediaFiles(string folder) => Directory.Exists(Path.Combine(folder, "media")) ? [.. Directory.EnumerateFiles(Path.Combine(folder, "media"), "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)] : [];
}
