using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.UseCases.Ledger;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Students.Merging;

/// <summary>Gives a student a life by chance: some of everything that can name a student; and counts what is there.</summary>
internal static class MergedLives
{
    public static async Task Live(TestOffice office, StudentId student, int seed)
    {
        var chance = new Random(seed);
        var plan = await office.GivePlan(student);
        for (var i = chance.Next(3); i > 0; i--) await Pay(office, student, seed * 10 + i);
        if (chance.Next(3) > 0) await office.Change(db => PersonalTraces.Leave(db, plan, office.Now));
        await office.Change(db =>
        {
            for (var i = chance.Next(3); i > 0; i--)
            {
                var ids = new SeededIds(seed * 1000 + i);
                var file = DeviceFile.Open(ids.Next(), student, office.Coach, office.Now);
                file.Call("swings.csv", $"{seed}-{i}");
                if (chance.Next(2) > 0) file.Close(new FileOutcome(), office.Now);
                var group = StudentGroup.Begin(GroupId.From(ids.Next()), $"Group {seed} {i}", office.Now);
                group.Add(student, office.Now);
                db.AddRange(file, group);
            }

            return Task.CompletedTask;
        });
    }

    /// <summary>Money that came in for a student, by the books.</summary>
    public static async Task Pay(TestOffice office, StudentId student, int seed)
    {
        var payer = await office.Must((OpenPayer open) => open.For(student, office.Desk));
        var facts = new EntryFacts { Id = EntryId.From(new SeededIds(seed).Next()), At = office.Now, On = new LocalDate(2026, 3, 2), PayerId = payer, StudentId = student, By = "Dora Desk" };
        await office.Change(db =>
        {
            db.Add(LedgerEntry.Write(EntryKind.Payment, facts, Movements.Payment(new Money(500 + seed, Currency.Of("GBP")), PaymentMethod.Cash)));
            return Task.CompletedTask;
        });
    }

    /// <summary>Every table with how many rows it has, but for the history of who did what.</summary>
    public static Task<IReadOnlyList<string>> Rows(TestOffice office) => office.Read<IReadOnlyList<string>>(async db =>
    {
        var counts = new List<string>();
        foreach (var table in db.Model.GetRelationalModel().Tables.Select(t => t.Name).Where(t => t != "AuditEntries").Order(StringComparer.Ordinal))
        {
            var sql = $"SELECT COUNT(*) AS \"Value\" FROM \"{table}\"";
            counts.Add($"{table}: {await db.Database.SqlQueryRaw<long>(sql).SingleAsync()}");
        }

        return counts;
    });

    /// <summary>Every column of money with its sum.</summary>
    public static Task<IReadOnlyList<string>> Money(TestOffice office) => office.Read<IReadOnlyList<string>>(async db =>
    {
        var columns = db.Model.GetRelationalModel().Tables.SelectMany(t => t.Columns.Where(c => c.Name.EndsWith("Minor", StringComparison.Ordinal)).Select(c => (Table: t.Name, Column: c.Name))).ToList();
        Assert.NotEmpty(columns);
        var sums = new List<string>();
        foreach (var (table, column) in columns)
        {
            var sql = $"SELECT CAST(COALESCE(SUM(\"{column}\"), 0) AS TEXT) AS \"Value\" FROM \"{table}\"";
            sums.Add($"{table}.{column}: {await db.Database.SqlQueryRaw<string>(sql).SingleAsync()}");
        }

        return sums;
    });
}
