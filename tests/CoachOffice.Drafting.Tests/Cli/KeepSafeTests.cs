using System.Text;
using CoachOffice.Cli;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Drafting.Tests.Cli;

/// <summary>A practice saved, tried out, brought back and moved from a shell.</summary>
public sealed class KeepSafeTests : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("keep-safe");
    private readonly StringWriter _errors = new();
    private MemoryStream _output = new();

    private string Office => Path.Combine(_folder.FullName, "office");

    private string Shelf => Path.Combine(_folder.FullName, "shelf");

    private string Output => Encoding.UTF8.GetString(_output.ToArray());

    public async ValueTask InitializeAsync()
    {
        var configuration = new ConfigurationBuilder().Build();
        await using var services = new ServiceCollection().AddSingleton<IConfiguration>(configuration).AddSingleton(DataFolder.At(Office)).AddCoachOffice(configuration).BuildServiceProvider();
        await using var scope = services.CreateAsyncScope();
        Assert.Null(await scope.ServiceProvider.GetRequiredService<PrepareDatabase>().Now(TestContext.Current.CancellationToken));
        var form = new FirstRunForm
        {
            OwnerName = "Olive Sand",
            OwnerEmail = "olive@harbour-road.example",
            Password = "nine calm otters swim",
            Practice = new PracticeDetails { Name = "Harbour Road", Zone = "Europe/London", Currency = "GBP" },
        };
        Assert.True((await scope.ServiceProvider.GetRequiredService<OpenPractice>().For(form)).Succeeded);
    }

    public ValueTask DisposeAsync()
    {
        foreach (var name in (string[])["office", "fresh"]) OfficeDatabase.InFile(Path.Combine(_folder.FullName, name, "office.db")).LetGo();
        _folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public void A_practice_is_saved_tried_out_and_brought_back()
    {
        Assert.Equal(0, Run("backup", "--data", Office, "--to", Shelf));
        Assert.Contains("brought back aside and found the same", Output, StringComparison.Ordinal);
        var backup = Assert.Single(Directory.GetDirectories(Shelf, "backup-*"));

        Assert.Equal(0, Run("try-backup", backup));
        Assert.Matches(@"Accounts +1 rows +[0-9a-f]{16}\n", Output);
        Assert.Equal(2, Run("restore", backup, "--data", Office));
        Assert.Contains("only brought back into an empty place", _errors.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, Run("restore", backup, "--data", Path.Combine(_folder.FullName, "fresh")));
        Assert.Equal(0, Run("backup", "--data", Path.Combine(_folder.FullName, "fresh"), "--to", Shelf));
        Assert.Equal(2, Run("backup", "--data", Path.Combine(_folder.FullName, "nowhere")));
    }

    [Fact]
    public void A_move_prints_every_table_and_leaves_what_was_there()
    {
        var from = $"sqlite:{Path.Combine(Office, "office.db")}";
        var to = $"sqlite:{Path.Combine(_folder.FullName, "moved.db")}";

        Assert.Equal(0, Run("move", "--from", from, "--to", to));
        Assert.Matches(@"Practices +1 +1  ([0-9a-f]{16})  \1\n", Output);
        Assert.Contains("every table holds the same in both", Output, StringComparison.Ordinal);
        Assert.Equal(2, Run("move", "--from", from, "--to", to));
        Assert.Contains("holds rows already", _errors.ToString(), StringComparison.Ordinal);
        Assert.Equal(2, Run("move", "--from", "paper:office", "--to", to));
        Assert.Equal(64, Run("move", "--from", from));
    }

    private int Run(params string[] args)
    {
        _output = new MemoryStream();
        return CommandLine.Run(args, _output, _errors);
    }
}
