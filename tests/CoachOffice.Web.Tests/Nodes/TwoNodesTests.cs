using System.Net;

namespace CoachOffice.Web.Tests.Nodes;

/// <summary>Two processes of the built program on one database: whoever is sent from one to the other notices nothing.</summary>
public sealed class TwoNodesTests
{
    private const string Dog = "cautions:\n  - { id: mind-the-dog, when: drill, text: The yard has a dog. }\n";
    private readonly CookieContainer _cookies = new();

    [Fact]
    public async Task One_office_on_two_nodes()
    {
        await using var database = await NodeDatabase.Make();
        await using var one = Node.On(database);
        await using var other = Node.On(database);
        var (here, there) = (At(await one.Address()), At(await other.Address()));

        await OpensOnOneAndWorksOnTheOther(here, there);
        await DraftsThereByTheEditionPutIntoForceHere(database, here, there);
        var plan = there.Path;
        await one.Kill();
        await GoesOnAlone(there, plan);
        await using var again = Node.On(database);
        var back = At(await again.Ready());
        await back.Open(plan);

        Assert.Equal(HttpStatusCode.OK, back.Status);
        Assert.DoesNotContain("crit:", other.Log + again.Log, StringComparison.Ordinal);
        TestContext.Current.SendDiagnosticMessage("two nodes: started at once on an empty database, one office; signed in here, form sent there; edition put in force here, draft made there; one killed, plan approved on the other; started again, same session.");
    }

    [Fact]
    public async Task Nodes_killed_while_they_make_the_database_leave_one_that_heals()
    {
        await using var database = await NodeDatabase.Make();
        foreach (var moment in (int[])[350, 600, 850, 1100])
        {
            await using var doomed = Node.On(database);
            await using var second = Node.On(database);
            await Task.WhenAny(doomed.Address(), Task.Delay(moment, TestContext.Current.CancellationToken));
            await Task.WhenAll(doomed.Kill(), second.Kill());
        }

        await using var node = Node.On(database);
        await node.Ready();

        Assert.Equal("1", await database.Ask("SELECT COUNT(*) FROM \"__EFMigrationsHistory\""));
        Assert.NotEqual("0", await database.Ask("SELECT COUNT(*) FROM pg_trigger WHERE tgname LIKE 'Keep\\_%'"));
        Assert.Equal("1", await database.Ask("SELECT COUNT(*) FROM \"BooksInForce\""));
    }

    [Fact]
    public async Task A_node_killed_while_it_makes_its_file_leaves_one_that_heals()
    {
        var folder = Directory.CreateTempSubdirectory("coachoffice-killed-");
        foreach (var moment in (int[])[350, 600, 850])
        {
            await using var doomed = Node.In(folder.FullName);
            await Task.WhenAny(doomed.Address(), Task.Delay(moment, TestContext.Current.CancellationToken));
            await doomed.Kill();
        }

        await using (var node = Node.In(folder.FullName))
        {
            await node.Ready();
        }

        folder.Delete(recursive: true);
    }

    private static async Task OpensOnOneAndWorksOnTheOther(Visitor here, Visitor there)
    {
        await here.Open("/");
        await here.Send("form", Owner.FirstRun());
        Assert.Equal("/account/second-factor", here.Path);
        await there.Open("/");
        Assert.Equal("Today", there.Heading);

        // A form opened on one node and sent to the other: the proof of origin holds on both.
        await here.Open("/students/new");
        there.Holds(here);
        await there.Send("main form", ("Input.GivenName", "Ida"), ("Input.FamilyName", "Sommerfeld"), ("Input.BirthDate", "1988-03-04"));
        Assert.StartsWith("/students/", there.Path, StringComparison.Ordinal);
        await here.Open(there.Path);
        Assert.Equal(HttpStatusCode.OK, here.Status);
    }

    private static async Task DraftsThereByTheEditionPutIntoForceHere(NodeDatabase database, Visitor here, Visitor there)
    {
        await there.Drafts();
        var before = await database.Ask(LastDraft);
        await here.Open("/rulebook/own-rules");
        await here.SendFile("main form", ("file", "own.yaml", System.Text.Encoding.UTF8.GetBytes(Dog)), ("Why", "There is a dog now"));
        Assert.Equal(HttpStatusCode.OK, here.Status);

        await there.Drafts();

        var after = await database.Ask(LastDraft);
        Assert.NotEqual(before, after);
        Assert.Equal(await database.Ask("SELECT \"Sha256\" FROM \"BooksInForce\""), after);
    }

    private static async Task GoesOnAlone(Visitor there, string plan)
    {
        await there.Open(plan);
        await there.Send("form.approve");
        Assert.Equal((HttpStatusCode.OK, plan), (there.Status, there.Path));
        await there.Open("/follow-ups");
        Assert.Contains("Sommerfeld", there.Text, StringComparison.Ordinal);
    }

    private const string LastDraft = "SELECT \"RulebookSha256\" FROM \"StoredDrafts\" ORDER BY \"MadeAt\" DESC, \"Id\" DESC LIMIT 1";

    private Visitor At(Uri address) => new(new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = _cookies }) { BaseAddress = address });
}
