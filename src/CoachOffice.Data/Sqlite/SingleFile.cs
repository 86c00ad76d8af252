using Microsoft.Data.Sqlite;

namespace CoachOffice.Data.Sqlite;

/// <summary>Makes one file of an SQLite database nobody uses: no log beside it, and no lock of its making.</summary>
internal static class SingleFile
{
    public static void Of(string path)
    {
        using (var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ConnectionString))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA journal_mode=DELETE";
            command.ExecuteNonQuery();
        }

        File.Delete(path + ".preparing");
    }
}
