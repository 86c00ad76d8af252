using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Rulebook;

/// <summary>Only who teaches by the rules changes them: each operation once as each policy, as the clock and as a student behind a link.</summary>
public abstract class RulebookRightsTests(OfficeFixture fixture)
{
    private static readonly EntryId Caution = new(EntryKind.Caution, "mind-the-dog");
    private static readonly EntryEdit Edit = new(Caution, EntryDeed.Write, "id: mind-the-dog\nwhen: drill\ntext: The yard has a dog.\n");

    [Theory]
    [InlineData("open-entry")]
    [InlineData("check-entry")]
    [InlineData("keep-change")]
    [InlineData("read-work")]
    [InlineData("drop-change")]
    [InlineData("take-back-drop")]
    [InlineData("take-new-base")]
    [InlineData("compare-my-changes")]
    [InlineData("put-in-force")]
    [InlineData("go-back-to-edition")]
    [InlineData("export-own-rules")]
    [InlineData("import-own-rules")]
    public async Task Only_owner_and_coach_may(string operation)
    {
        var office = await fixture.Another(opened: true);
        foreach (var actor in new[] { office.Desk, Actor.Clock, Actor.Student })
        {
            Assert.Equal([NotAllowed.Code], await Try(office, operation, actor));
            Assert.Equal(0, await office.Read(db => db.RulebookWorks.CountAsync()));
            Assert.Equal(1, await office.Read(db => db.RulebookEditions.CountAsync()));
        }

        foreach (var actor in new[] { office.Owner, office.Coach }) Assert.DoesNotContain(NotAllowed.Code, await Try(office, operation, actor));
    }

    private static async Task<IReadOnlyList<string>> Try(TestOffice office, string operation, Actor actor) => operation switch
    {
        "open-entry" => Codes(await office.Do((OpenEntry o) => o.Of(Caution, actor))),
        "check-entry" => Codes(await office.Do((CheckEntry c) => c.Of(Edit, actor))),
        "keep-change" => Codes(await office.Do((KeepChange k) => k.Of(new WorkForm(1, [Edit]), actor))),
        "read-work" => Codes(await office.Do((ReadWork r) => r.Of(actor))),
        "drop-change" => Codes(await office.Do((DropChange d) => d.Of(null, actor))),
        "take-back-drop" => Codes(await office.Do((TakeBackDrop t) => t.By(actor))),
        "take-new-base" => Codes(await office.Do((TakeNewBase t) => t.By(actor))),
        "compare-my-changes" => Codes(await office.Do((CompareMyChanges c) => c.By(actor))),
        "put-in-force" => Codes(await office.Do((PutInForce p) => p.By("why", actor))),
        "go-back-to-edition" => Codes(await office.Do((GoBackToEdition g) => g.To(1, 1, "why", actor))),
        "export-own-rules" => Codes(await office.Do((ExportOwnRules e) => e.Of(null, actor))),
        "import-own-rules" => Codes(await office.Do((ImportOwnRules i) => i.From(new OwnRulesForm("removed: []", "why"), actor))),
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, "no such operation"),
    };

    private static IReadOnlyList<string> Codes<T>(Outcome<T> outcome) => [.. outcome.Refusals.Select(r => r.Code)];
}

public sealed class RulebookRightsOnSqlite(SqliteOffice office) : RulebookRightsTests(office), IClassFixture<SqliteOffice>;

public sealed class RulebookRightsOnPostgreSql(PostgreSqlOffice office) : RulebookRightsTests(office), IClassFixture<PostgreSqlOffice>;
