using System.Security.Cryptography;
using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The shipped books a practice has seen, by the hash of their text.</summary>
public static class ShippedTexts
{
    /// <summary>SHA-256 of a bundle, lower hex.</summary>
    public static string HashOf(string bundle) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(bundle)));

    /// <summary>The files of a shipped book; throws <see cref="InvalidOperationException"/> when it was never kept.</summary>
    public static async Task<RulebookText> Shipped(this OfficeDb db, string sha256, CancellationToken stop) =>
        RulebookText.Unbundle(await db.ShippedBooks.Where(b => b.Sha256 == sha256).Select(b => b.Text).SingleAsync(stop));

    /// <summary>The files of a kept book, those of the shipped one below it included.</summary>
    public static async Task<RulebookText> FilesOf(this OfficeDb db, KeptRulebook kept, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(kept);
        var files = RulebookText.Unbundle(kept.Text);
        return kept.ShippedSha256 is { } shipped ? (await db.Shipped(shipped, stop)).With(files.Files) : files;
    }
}
