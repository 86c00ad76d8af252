using System.Text;
using CoachOffice.Cli;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Drafting.Tests.Cli;

/// <summary>Own rules out of an office's data folder and into it, as one of its accounts.</summary>
public sealed class ExchangeRulesTests : IAsyncLifetime
{
    private const string Mail = "olive@harbour-road.example";
    private const string Dog = "cautions:\n  - { id: mind-the-dog, when: drill, text: The yard has a dog. }\n";
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("exchange-rules");
    private readonly StringWriter _errors = new();
    private MemoryStream _output = new();

    private string Office => Path.Combine(_folder.FullName, "office");

    private string Output => Encoding.UTF8.GetString(_output.ToArray());

    public async ValueTask InitializeAsync()
    {
        var configuration = new ConfigurationBuilder().Build();
        await using var services = new ServiceCollection().AddSingleton<IConfiguration>(configuration).AddSingleton(DataFolder.At(Office)).AddCoachOffice(configuration).BuildServiceProvider();
        await using var scope = services.CreateAsyncScope();
        Assert.Null(await scope.ServiceProvider.GetRequiredService<PrepareDatabase>().Now(TestContext.Current.CancellationToken));
        Assert.True((await scope.ServiceProvider.GetRequiredService<OpenPractice>().For(FirstRun)).Succeeded);
        Assert.True((await scope.ServiceProvider.GetRequiredService<AdoptShippedRulebook>().AtStartUp()).Succeeded);
    }

    public ValueTask DisposeAsync()
    {
        OfficeDatabase.InFile(Path.Combine(Office, "office.db")).LetGo();
        _folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public void Rules_brought_in_are_the_next_edition_and_come_out_the_same_each_time()
    {
        Assert.Equal(0, Run("rulebook", "import", At("own.yaml", Dog), "--look", "--as", Mail));
        Assert.StartsWith("would be edition 2, sha256 ", Output, StringComparison.Ordinal);
        Assert.Equal(2, Run("rulebook", "import", At("own.yaml", Dog), "--as", Mail));
        Assert.Equal(0, Run("rulebook", "import", At("own.yaml", Dog), "--as", Mail, "--why", "There is a dog now"));
        Assert.Matches("^edition 2, sha256 [0-9a-f]{64}\ncaution mind-the-dog added\n$", Output);

        Assert.Equal(0, Run("rulebook", "export", "--as", Mail));
        var file = Output;
        Assert.Contains("The yard has a dog.", file, StringComparison.Ordinal);
        Assert.Equal(2, Run("rulebook", "import", At("again.yaml", file), "--as", Mail, "--why", "again"));
        Assert.Contains("says already", _errors.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, Run("rulebook", "export", "--as", Mail, "--edition", "1"));
        Assert.Equal(ExportOwnRules.Nothing, Output);
    }

    [Fact]
    public void A_faulty_file_is_told_by_its_own_name_and_line_and_nothing_is_changed()
    {
        Assert.Equal(2, Run("rulebook", "import", At("own.yaml", Dog + "drils: []\n"), "--as", Mail, "--why", "a slip"));

        Assert.StartsWith($"{Path.Combine(_folder.FullName, "own.yaml")}:3:1: ", _errors.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, Run("rulebook", "export", "--as", Mail));
        Assert.Equal(ExportOwnRules.Nothing, Output);
    }

    [Fact]
    public void Only_an_account_of_the_office_that_is_there_acts()
    {
        Assert.Equal(2, Run("rulebook", "export", "--as", "nobody@harbour-road.example"));
        Assert.Equal(2, CommandLine.Run(["rulebook", "export", "--as", Mail, "--data", Path.Combine(_folder.FullName, "elsewhere")], _output, _errors));
        Assert.Equal(64, Run("rulebook", "export"));

        Assert.Contains("Nobody here has the mail address", _errors.ToString(), StringComparison.Ordinal);
        Assert.Contains("There is no office in", _errors.ToString(), StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder.FullName, "elsewhere")));
    }

    [Fact]
    public void Own_rules_are_checked_over_the_shipped_ones_without_an_office()
    {
        Assert.Equal(0, CommandLine.Run(["check-rulebook", "--own", At("own.yaml", Dog)], _output, _errors));
        Assert.Contains($"{Path.Combine(_folder.FullName, "own.yaml")}:2: warning: unreachable: mind-the-dog", _errors.ToString(), StringComparison.Ordinal);

        Assert.Equal(2, CommandLine.Run(["check-rulebook", "--own", At("own.yaml", "removed:\n  - drill: no-such\n")], _output, _errors));
        Assert.Contains($"{Path.Combine(_folder.FullName, "own.yaml")}:2:", _errors.ToString(), StringComparison.Ordinal);
    }

    private static FirstRunForm FirstRun => new()
    {
        Practice = new PracticeDetails { Name = "Harbour Road Golf Practice", Zone = "Europe/London", Currency = "GBP", MailFrom = "office@harbour-road.example" },
        OwnerName = "Olive Owner",
        OwnerEmail = Mail,
        Password = "a brick of plain words 7",
    };

    private int Run(params string[] args)
    {
        _output = new MemoryStream();
        return CommandLine.Run([.. args, "--data", Office], _output, _errors);
    }

    private string At(string name, string text)
    {
        var path = Path.Combine(_folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }
}
