using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace CoachOffice.Data;

/// <summary>All migrations as one SQL text, written beside them when they are made: running them one by one in an empty database first builds models of it, which takes longer than the rest of a first start. A test holds the text against the migrations.</summary>
internal static class WrittenSchema
{
    private const string Resource = "Schema.sql";

    /// <summary>The text for this context's database. It is one transaction, and writes the migrations' own history too.</summary>
    public static async Task<string> Of(OfficeDb db, CancellationToken stop)
    {
        var assembly = db.GetService<IMigrationsAssembly>().Assembly;
        await using var text = assembly.GetManifestResourceStream(Resource) ?? throw new InvalidOperationException($"{assembly.GetName().Name} has no {Resource}.");
        using var reader = new StreamReader(text);
        return await reader.ReadToEndAsync(stop);
    }
}
