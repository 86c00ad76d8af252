using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Rulebook;

public abstract class RulebooksTests(OfficeFixture fixture)
{
    private static readonly EntryId Ranges = new(EntryKind.Range, "tempo-ratio");

    [Fact]
    public async Task No_draft_fails_while_rules_are_saved_and_each_is_by_one_edition()
    {
        var office = await fixture.Another(opened: true);
        var lesson = await Scene.LessonOf(office, await office.Register(Scene.Adult), new LocalDate(2026, 3, 2));
        using var begun = new SemaphoreSlim(0);
        using var saved = new CancellationTokenSource();

        var drafting = Task.Run(() => Draft(office, lesson, begun, saved.Token));
        List<string> editions = [await Sha(office)];
        foreach (var aim in new[] { "3.2", "3.3" })
        {
            await begun.WaitAsync();
            editions.Add((await office.MustEdit(office.Coach, editions.Count, "aims higher", new EntryEdit(Ranges, EntryDeed.Write, await Aiming(office, aim)))).Sha256);
        }

        await begun.WaitAsync();
        await saved.CancelAsync();
        var plans = await drafting;
        var by = await office.Read(db => db.Plans.AsNoTracking().Join(db.StoredDrafts, p => p.DraftId, d => d.Id, (p, d) => new { p.Id, d.RulebookSha256 }).ToDictionaryAsync(p => p.Id, p => p.RulebookSha256));
        var order = plans.Select(plan => editions.IndexOf(by[plan])).ToList();
        Assert.Equal(0, order[0]);
        Assert.Equal(editions.Count - 1, order[^1]);
        Assert.Equal(order.Order(), order);
    }

    [Fact]
    public async Task Only_so_many_books_are_kept_and_the_one_not_asked_for_longest_goes_first()
    {
        var office = await fixture.Another(opened: true);
        var books = office.Services.GetRequiredService<Rulebooks>();
        var inForce = await books.InForce();

        for (var i = 1; i < Rulebooks.MostKept; i++) books.Keep(Other(inForce, i));
        Assert.Same(inForce, await books.InForce());
        books.Keep(Other(inForce, Rulebooks.MostKept));

        // No text is kept of the others, so one that went can only be refused.
        await Assert.ThrowsAsync<InvalidOperationException>(() => books.For("other-1"));
        foreach (var i in Enumerable.Range(2, Rulebooks.MostKept - 1)) Assert.Equal($"other-{i}", (await books.For($"other-{i}")).Sha256);
        books.Keep(Other(inForce, 1));
        Assert.NotSame(inForce, await books.InForce());
    }

    private static CompiledRulebook Other(CompiledRulebook book, int number) => CompiledRulebook.Compile(book.Loaded with { Sha256 = $"other-{number}" });

    private static async Task<List<PlanId>> Draft(TestOffice office, LessonId lesson, SemaphoreSlim begun, CancellationToken saved)
    {
        List<PlanId> plans = [];
        do
        {
            plans.Add(await office.Must((DraftPlan draft) => draft.For(lesson, office.Coach, CancellationToken.None)));
            begun.Release();
        }
        while (!saved.IsCancellationRequested);

        // One that begins after the last save.
        plans.Add(await office.Must((DraftPlan draft) => draft.For(lesson, office.Coach, CancellationToken.None)));
        return plans;
    }

    private static async Task<string> Sha(TestOffice office) => (await office.Services.GetRequiredService<Rulebooks>().InForce()).Sha256;

    private static async Task<string> Aiming(TestOffice office, string most)
    {
        var text = (await office.Must((OpenEntry open) => open.Of(Ranges, office.Owner))).InForce!;
        var driver = text.Split('\n').Single(line => line.StartsWith("driver:", StringComparison.Ordinal));
        return text.Replace(driver, $"driver: {{ range: [2.4, 3.6], aim: [2.8, {most}] }}", StringComparison.Ordinal);
    }
}

public sealed class RulebooksOnSqlite(SqliteOffice office) : RulebooksTests(office), IClassFixture<SqliteOffice>;

public sealed class RulebooksOnPostgreSql(PostgreSqlOffice office) : RulebooksTests(office), IClassFixture<PostgreSqlOffice>;
