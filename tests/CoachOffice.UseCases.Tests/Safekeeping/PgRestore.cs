using System.Diagnostics;
using CoachOffice.Data;
using Npgsql;

namespace CoachOffice.UseCases.Tests.Safekeeping;

/// <summary>The server's own program for bringing a dump back.</summary>
internal static class PgRestore
{
    public static async Task Into(OfficeDatabase database, string dump, CancellationToken stop)
    {
        var to = new NpgsqlConnectionStringBuilder(database.ConnectionString);
        using var program = Process.Start(new ProcessStartInfo("pg_restore", ["--no-owner", "--exit-on-error", "-h", to.Host!, "-p", $"{to.Port}", "-U", to.Username!, "-d", to.Database!, dump]) { RedirectStandardError = true, UseShellExecute = false })!;
        var errors = await program.StandardError.ReadToEndAsync(stop);
        await program.WaitForExitAsync(stop);
        Assert.True(program.ExitCode == 0, errors);
    }
}
