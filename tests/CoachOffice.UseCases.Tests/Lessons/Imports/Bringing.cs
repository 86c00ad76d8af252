using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Lessons.Imports;

/// <summary>A coach brings a file for a student and goes on with it.</summary>
internal sealed class Bringing(TestOffice office, StudentId student)
{
    public const string Head = "Date,Club,Club speed [mph],Ball speed [mph],Attack angle [deg],Club path [deg],Face to path [deg],Start direction [deg]\n";
    public const string Swing = "2026-02-20,Driver,98.4,145.2,2.1,-1.5,1.2,-0.6\n";

    public static readonly IReadOnlyDictionary<string, LessonId> New = new Dictionary<string, LessonId>();

    public StudentId Student => student;

    public static async Task<Bringing> For(TestOffice office, Hand hand = Hand.Right) =>
        new(office, await office.Register(AStudent.Named("Rada", "Ford") with { Hand = hand }));

    public Task<Outcome<DeviceFile>> Tries(byte[] bytes, Actor? by = null, string name = "swings.csv") =>
        office.Do((OpenDeviceFile open) => open.For(student, name, new MemoryStream(bytes), by ?? office.Coach));

    public async Task<DeviceFile> Brings(string text, Actor? by = null)
    {
        var file = await Tries(Encoding.UTF8.GetBytes(text), by);
        Assert.True(file.Succeeded, string.Join("; ", file.Refusals.Select(r => r.Sentence)));
        return file.Value;
    }

    public async Task<IReadOnlyList<Refusal>> IsRefused(string text) => (await Tries(Encoding.UTF8.GetBytes(text))).Refusals;

    public Task<ColumnsView> Columns(DeviceFile file) => office.Must((ReadColumns read) => read.Of(student, file.Id, office.Coach));

    /// <summary>The form as it fills itself, with every sign as ours.</summary>
    public async Task<ColumnsForm> Form(DeviceFile file)
    {
        var form = (await Columns(file)).Form;
        return form with { Columns = [.. form.Columns.Select(c => c with { Plus = c.Plus.Length > 0 ? c.Plus : "ours" })] };
    }

    public Task<Outcome<DeviceFile>> Says(DeviceFile file, ColumnsForm form) => office.Do((SayColumns say) => say.Of(student, file.Id, form, office.Coach));

    /// <summary>Brings it and says what the form does not fill by itself.</summary>
    public async Task<DeviceFile> BringsTold(string text, Func<ColumnsForm, ColumnsForm>? more = null)
    {
        var file = await Brings(text);
        var said = await Says(file, (more ?? (f => f))(await Form(file)));
        Assert.True(said.Succeeded, string.Join("; ", said.Refusals.Select(r => r.Sentence)));
        return file;
    }

    public Task<DeviceFileView> Looks(DeviceFile file) => office.Must((PreviewDeviceFile look) => look.Of(student, file.Id, office.Coach));

    /// <summary>Imports it and waits for the end.</summary>
    public async Task<ImportProgress> Imports(DeviceFile file, IReadOnlyDictionary<string, LessonId>? into = null)
    {
        await office.Must((BeginImport begin) => begin.Of(new ImportOrder(student, file.Id, into ?? New, office.Coach)));
        return await Ends(file);
    }

    public async Task<ImportProgress> Ends(DeviceFile file)
    {
        ImportProgress progress;
        while ((progress = await office.Must((WatchImport watch) => watch.Of(student, file.Id, office.Coach))).State == ImportState.Running)
            await Task.Delay(10, TestContext.Current.CancellationToken);
        return progress;
    }

    public async Task<FileOutcome> Outcome(DeviceFile file) => (await office.Must((DeviceFileDoor door) => door.Find(student, file.Id, office.Coach))).Outcome!;
}
