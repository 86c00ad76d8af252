using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Households;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Students.Households;

public abstract class HouseholdTests(OfficeFixture fixture) : IAsyncLifetime
{
    private TestOffice _office = null!;
    private StudentId _kid;
    private StudentId _parent;

    public async ValueTask InitializeAsync()
    {
        _office = await fixture.Another(opened: true);
        _kid = await _office.Register(AStudent.Junior("Kit", "Young"));
        _parent = await _office.Register(AStudent.Named("Mara", "Young"));
    }

    public ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_guardian_is_offered_for_a_minor_and_a_grown_up_for_themselves()
    {
        Assert.Equal(["Mara Young <mara.young@example.org>"], (await Pays(_kid)).Offered.Select(p => $"{p.Name} <{p.Email}>"));
        Assert.Equal(["Mara Young <mara.young@example.org>"], (await Pays(_parent)).Offered.Select(p => $"{p.Name} <{p.Email}>"));
        Assert.Null((await Pays(_kid)).Household);
    }

    [Fact]
    public async Task One_payer_pays_for_several_students_and_the_list_shows_them_together()
    {
        var payer = await Lets(_kid, 1, "Mara Young");
        await _office.Must((ShareAPayer share) => share.Of(_kid, _parent, _office.Desk));
        var alone = await _office.Register(AStudent.Named("Al", "One"));
        await Lets(alone, 2, "Al One");

        var row = Assert.Single(await _office.Do((ListHouseholds list) => list.Now()));
        Assert.Equal((payer, "Mara Young"), (row.Id, row.Name));
        Assert.Equal(["Kit Young", "Mara Young"], row.Students);
        Assert.Equal(["Kit Young", "Mara Young"], (await Pays(_parent)).Household!.Students.Select(s => s.Name));
        Assert.Equal(2, (await _office.Do((FindStudents find) => find.Matching("young", 1, archived: false, new StudentsWithin { Payer = payer }))).Total);
    }

    [Fact]
    public async Task Sharing_with_somebody_without_a_payer_makes_theirs()
    {
        await _office.Must((ShareAPayer share) => share.Of(_kid, _parent, _office.Desk));

        var household = (await Pays(_kid)).Household!;
        Assert.Equal(("Mara Young", "mara.young@example.org", 2), (household.Payer.Name, household.Payer.Email, household.Students.Count));
    }

    [Fact]
    public async Task A_student_taken_out_has_no_payer_until_there_is_something_to_pay()
    {
        var payer = await Lets(_kid, 1, "Mara Young");
        await _office.Must((JoinHousehold join) => join.The(_parent, payer, _office.Desk));
        await _office.Must((LeaveHousehold leave) => leave.The(_kid, _office.Desk));
        await _office.Must((LeaveHousehold leave) => leave.The(_kid, _office.Desk));

        Assert.Null((await Pays(_kid)).Household);
        Assert.Equal(["Mara Young"], (await _office.Must((HouseholdPage page) => page.Of(payer))).Students.Select(s => s.Name));
        Assert.Equal(["payer-left", "payer-set", "payer-set"], await _office.Read(db => db.AuditEntries.Where(a => a.Action.StartsWith("payer-")).Select(a => a.Action).OrderBy(a => a).ToListAsync()));
    }

    [Fact]
    public async Task A_form_sent_twice_makes_one_payer_and_what_is_wrong_is_refused()
    {
        await Lets(_kid, 1, "Mara Young");
        await Lets(_kid, 1, "Mara Young");
        Assert.Equal(1, await _office.Read(db => db.Payers.CountAsync()));

        var id = PayerId.From(new SeededIds(9).Next());
        Assert.Equal("payer-name", (await _office.Refuses((LetPay let) => let.For(_kid, id, new PayerDetails { Name = " " }, _office.Desk))).Single().Code);
        Assert.Equal("payer-not-found", (await _office.Refuses((JoinHousehold join) => join.The(_kid, id, _office.Desk))).Single().Code);
        Assert.Equal("student-not-found", (await _office.Refuses((JoinHousehold join) => join.The(StudentId.From(id.Value), id, _office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await _office.Refuses((LeaveHousehold leave) => leave.The(_kid, Domain.Access.Actor.Student))).Single().Code);
    }

    private Task<PaysView> Pays(StudentId student) => _office.Must((PaysPage page) => page.Of(student));

    private Task<PayerId> Lets(StudentId student, int seed, string name) =>
        _office.Must((LetPay let) => let.For(student, PayerId.From(new SeededIds(seed).Next()), new PayerDetails { Name = name }, _office.Desk));
}

public sealed class HouseholdsOnSqlite(SqliteOffice office) : HouseholdTests(office), IClassFixture<SqliteOffice>;

public sealed class HouseholdsOnPostgreSql(PostgreSqlOffice office) : HouseholdTests(office), IClassFixture<PostgreSqlOffice>;
