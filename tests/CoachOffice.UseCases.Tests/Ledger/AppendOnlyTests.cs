using CoachOffice.Data;
using CoachOffice.Domain.Ledger;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Ledger;

public abstract class AppendOnlyTests(OfficeFixture fixture)
{
    [Fact]
    public async Task The_database_itself_refuses_to_change_or_delete_what_is_in_the_books()
    {
        var office = fixture.Office;
        var student = await office.Register(AStudent.Named("Una", "Payson"));
        var payer = await office.Must((OpenPayer open) => open.For(student, office.Desk));
        await office.Change(db => Write(db, payer, 1));

        await Refused("UPDATE \"LedgerEntries\" SET \"Text\" = 'another'");
        await Refused("UPDATE \"LedgerPostings\" SET \"AmountMinor\" = \"AmountMinor\" * 2");
        await Refused("UPDATE \"LedgerDocuments\" SET \"Number\" = 7");
        await Refused("DELETE FROM \"LedgerDocuments\"");
        await Refused("DELETE FROM \"LedgerPostings\"");
        await Refused("DELETE FROM \"LedgerEntries\"");
        Assert.Equal(-500, await office.Read(db => db.LedgerPostings.Where(p => p.Account == LedgerAccount.Receivable).SumAsync(p => p.AmountMinor)));
    }

    private Task Write(OfficeDb db, PayerId payer, int seed)
    {
        var ids = new SeededIds(seed);
        var facts = new EntryFacts { Id = EntryId.From(ids.Next()), At = fixture.Office.Now, On = new LocalDate(2026, 3, 2), PayerId = payer, By = "Dora Desk" };
        db.Add(LedgerEntry.Write(EntryKind.Payment, facts, Movements.Payment(new Money(500, Currency.Of("GBP")), PaymentMethod.Cash)));
        db.Add(new LedgerDocument
        {
            Id = DocumentId.From(ids.Next()),
            Kind = DocumentKind.Receipt,
            Year = 2026,
            Number = 1,
            PayerId = payer,
            EntryId = facts.Id,
            IssuedOn = facts.On,
            At = facts.At,
            By = facts.By,
            TotalMinor = 500,
            Content = new DocumentContent { From = ["Us"], To = ["Them"], Currency = "GBP", LastDay = facts.On, Lines = [new DocumentLine(facts.On, "On account", 500)] },
        });
        return Task.CompletedTask;
    }

    private async Task Refused(string sql)
    {
        var fault = await Record.ExceptionAsync(() => fixture.Office.Read(db => db.Database.ExecuteSqlRawAsync(sql)));
        Assert.Contains("never change", fault?.Message, StringComparison.Ordinal);
    }
}

public sealed class AppendOnlyOnPostgreSql(PostgreSqlOffice office) : AppendOnlyTests(office), IClassFixture<PostgreSqlOffice>;

public sealed class AppendOnlyOnSqlite(SqliteOffice office) : AppendOnlyTests(office), IClassFixture<SqliteOffice>;
