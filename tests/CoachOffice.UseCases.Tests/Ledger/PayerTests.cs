using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class PayerTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_student_pays_for_themselves_and_a_minor_by_the_guardian()
    {
        var office = fixture.Office;
        var adult = await PayerOf(await office.Register(AStudent.Named("Ada", "Payson")));
        var junior = AStudent.Junior("Jo", "Payson");
        var guardian = await PayerOf(await office.Register(junior));

        Assert.Equal("Ada Payson", adult.Name);
        Assert.Equal((junior.Guardian!.Name, junior.Guardian.Email), (guardian.Name, guardian.Email));
    }

    [Fact]
    public async Task Asked_twice_it_is_the_same_payer()
    {
        var student = await fixture.Office.Register(AStudent.Named("Once", "Only"));

        Assert.Equal((await PayerOf(student)).Id, (await PayerOf(student)).Id);
    }

    [Fact]
    public async Task The_payer_of_a_household_keeps_the_name_until_the_last_of_it_is_erased()
    {
        var office = fixture.Office;
        var first = await office.Register(AStudent.Named("Una", "Household"));
        var second = await office.Register(AStudent.Named("Dos", "Household"));
        var payer = await PayerOf(first);
        await office.Change(async db => (await db.Students.SingleAsync(s => s.Id == second)).PaidBy(payer.Id));

        await office.Must((EraseStudent erase) => erase.ForGood(first, office.Owner));
        Assert.Equal("Una Household", (await Read(payer.Id)).Name);

        await office.Must((EraseStudent erase) => erase.ForGood(second, office.Owner));
        var gone = await Read(payer.Id);
        Assert.StartsWith("Former payer ", gone.Name, StringComparison.Ordinal);
        Assert.Equal(("", ""), (gone.Email, gone.PostalAddress));
        var change = await office.Refuses((ChangePayer c) => c.To(payer.Id, gone.Version, new PayerDetails { Name = "Back" }, office.Owner));
        Assert.Equal("payer-not-found", change.Single().Code);
    }

    [Fact]
    public async Task Two_people_who_change_a_payer_see_both_values()
    {
        var office = fixture.Office;
        var payer = await PayerOf(await office.Register(AStudent.Named("Both", "Hands")));
        await office.Must((ChangePayer change) => change.To(payer.Id, payer.Version, new PayerDetails { Name = "Mrs Hands", PostalAddress = "1 Lane\r\nTown" }, office.Desk));

        var refusals = await office.Refuses((ChangePayer change) => change.To(payer.Id, payer.Version, new PayerDetails { Name = "Mr Hands" }, office.Owner));

        Assert.Equal(Clash.Code, refusals[0].Code);
        Assert.Contains(refusals, r => r.Sentence.Contains("'Mrs Hands'", StringComparison.Ordinal) && r.Sentence.Contains("'Mr Hands'", StringComparison.Ordinal));
        Assert.Equal("1 Lane\nTown", (await Read(payer.Id)).PostalAddress);
    }

    private async Task<Payer> PayerOf(StudentId student)
    {
        var office = fixture.Office;
        return await Read(await office.Must((OpenPayer open) => open.For(student, office.Desk)));
    }

    private Task<Payer> Read(PayerId id) => fixture.Office.Read(db => db.Payers.AsNoTracking().SingleAsync(p => p.Id == id));
}

public sealed class PayerOnPostgreSql(PostgreSqlOffice office) : PayerTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class PayerOnSqlite(SqliteOffice office) : PayerTests(office), IClassFixture<SqliteOffice>;
