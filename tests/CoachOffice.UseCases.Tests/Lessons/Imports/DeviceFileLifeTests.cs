using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Lessons.Imports;

/// <summary>How long a file and its text are there.</summary>
public abstract class DeviceFileLifeTests(OfficeFixture fixture)
{
    [Fact]
    public async Task The_text_of_a_file_lies_there_only_while_it_is_open()
    {
        var office = await fixture.Another(opened: true);
        var coach = await Bringing.For(office);
        string[] Lying() => Directory.GetFiles(Path.Combine(office.Folder, "device-files"));
        var file = await coach.BringsTold(Bringing.Head + Bringing.Swing);
        Assert.Single(Lying());
        await coach.Imports(file);
        Assert.Empty(Lying());

        var dropped = await coach.Brings(Bringing.Head + Bringing.Swing + Bringing.Swing);
        await office.Must((DropDeviceFile drop) => drop.Of(coach.Student, dropped.Id, office.Coach));
        Assert.Empty(Lying());

        await coach.Brings(Bringing.Head + Bringing.Swing + Bringing.Swing);
        File.SetLastWriteTimeUtc(Lying().Single(), office.Time.GetUtcNow().UtcDateTime);
        Assert.Equal(0, await office.Do((SweepDeviceFiles sweep) => sweep.Once(CancellationToken.None)));
        office.Time.Advance(TimeSpan.FromHours(25));
        Assert.Equal(1, await office.Do((SweepDeviceFiles sweep) => sweep.Once(CancellationToken.None)));
        Assert.Empty(Lying());
        Assert.Equal(1, await office.Read(db => db.DeviceFiles.CountAsync()));
    }

    [Fact]
    public async Task Erasing_the_student_takes_files_and_their_texts_along()
    {
        var office = await fixture.Another(opened: true);
        var coach = await Bringing.For(office);
        await coach.Imports(await coach.BringsTold(Bringing.Head + Bringing.Swing));
        await coach.Brings(Bringing.Head + Bringing.Swing + Bringing.Swing);

        await office.Must((EraseStudent erase) => erase.ForGood(coach.Student, office.Owner));

        Assert.Equal(0, await office.Read(db => db.DeviceFiles.CountAsync()));
        Assert.Empty(Directory.GetFiles(Path.Combine(office.Folder, "device-files")));
    }
}

public sealed class DeviceFileLifeOnSqlite(SqliteOffice office) : DeviceFileLifeTests(office), IClassFixture<SqliteOffice>;

public sealed class DeviceFileLifeOnPostgreSql(PostgreSqlOffice office) : DeviceFileLifeTests(office), IClassFixture<PostgreSqlOffice>;
