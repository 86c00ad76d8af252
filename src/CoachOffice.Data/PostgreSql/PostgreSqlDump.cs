using System.ComponentModel;
using System.Diagnostics;
using Npgsql;

namespace CoachOffice.Data.PostgreSql;

/// <summary>The server's own program for backups. Without it, or with one older than the server, the portable file is all there is.</summary>
internal static class PostgreSqlDump
{
    /// <summary>Writes a dump of a snapshot; false when there is no program that can.</summary>
    public static async Task<bool> Write(string connectionString, string snapshot, string file, CancellationToken stop)
    {
        try
        {
            using var program = Process.Start(Begin(new NpgsqlConnectionStringBuilder(connectionString), snapshot, file))!;
            await program.StandardError.ReadToEndAsync(stop);
            await program.WaitForExitAsync(stop);
            if (program.ExitCode == 0) return true;
        }
        catch (Win32Exception)
        {
            // There is no pg_dump on this machine.
        }

        File.Delete(file);
        return false;
    }

    private static ProcessStartInfo Begin(NpgsqlConnectionStringBuilder to, string snapshot, string file)
    {
        var start = new ProcessStartInfo("pg_dump", ["--format=custom", "--no-owner", $"--snapshot={snapshot}", $"--file={file}", "--no-password", to.Database ?? ""]) { RedirectStandardError = true, UseShellExecute = false };

        // By the environment, not the command line, which every user of a machine may read.
        (string Name, string? Value)[] values = [("PGHOST", to.Host), ("PGPORT", $"{to.Port}"), ("PGUSER", to.Username), ("PGPASSWORD", to.Password), ("PGPASSFILE", to.Passfile), ("PGSSLMODE", Ssl(to.SslMode)), ("PGSSLROOTCERT", to.RootCertificate)];
        foreach (var (name, value) in values)
        {
            if (!string.IsNullOrEmpty(value)) start.Environment[name] = value;
        }

        return start;
    }

    private static string Ssl(SslMode mode) => mode switch
    {
        SslMode.Disable => "disable",
        SslMode.Allow => "allow",
        SslMode.Prefer => "prefer",
        SslMode.Require => "require",
        SslMode.VerifyCA => "verify-ca",
        _ => "verify-full",
    };
}
