using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace CoachOffice.Web.Tests.Regressions;

/// <summary>A program that could not start told a page of stack instead of what to do. Each test starts the real one.</summary>
public sealed class StartTests : IDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("coachoffice-start-");

    public void Dispose() => _data.Delete(recursive: true);

    [Fact(Timeout = 60_000)]
    public async Task A_port_that_is_taken_is_named()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var address = $"http://127.0.0.1:{((IPEndPoint)taken.LocalEndpoint).Port}";

        Assert.Contains($"Failed to bind to address {address}: address already in use. Stop the program", await Starts(_data.FullName, address, TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact(Timeout = 60_000)]
    public async Task A_file_in_the_folders_place_is_named()
    {
        var file = Path.Combine(_data.FullName, "no-folder");
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);

        Assert.Contains("The data folder cannot be used", await Starts(file, "http://127.0.0.1:0", TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory(Timeout = 60_000)]
    [InlineData("office.json", "{ nope", "office.json in the data folder cannot be read: 'n' is an invalid start")]
    [InlineData("office.json", """{"Office":{"Mail":{"Port":"many"}}}""", "A setting cannot be used. Failed to convert configuration value 'many' at 'Office:Mail:Port'")]
    [InlineData("office.db", "This is a letter and no database, however long it may go on: it has no head and no pages.", "office.db in the data folder is damaged, or no database at all.")]
    public async Task A_file_that_cannot_be_read_is_named(string file, string text, string sentence)
    {
        await File.WriteAllTextAsync(Path.Combine(_data.FullName, file), text, TestContext.Current.CancellationToken);

        Assert.Contains(sentence, await Starts(_data.FullName, "http://127.0.0.1:0", TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private static async Task<string> Starts(string data, string address, CancellationToken stop)
    {
        var start = new ProcessStartInfo("dotnet", [typeof(Program).Assembly.Location, "--urls", address]) { RedirectStandardError = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment["COACHOFFICE_DATA"] = data;
        using var program = Process.Start(start)!;
        var (said, told) = (program.StandardError.ReadToEndAsync(stop), program.StandardOutput.ReadToEndAsync(stop));
        await program.WaitForExitAsync(stop);
        var all = await said + await told;
        Assert.Equal(1, program.ExitCode);
        Assert.DoesNotContain("   at ", all, StringComparison.Ordinal);
        return all;
    }
}
