using System.Security.Cryptography;
using System.Text.Json;
using CoachOffice.Data;
using CoachOffice.Domain.Lessons;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Which sheets have arrived before. A device that lost the connection after sending cannot know, and sends again.</summary>
public sealed class ArrivedSheets(OfficeDb db, PracticeClock clock)
{
    // A device that was away for longer finds a newer version of the lesson, and both are shown.
    private static readonly Duration Remembered = Duration.FromDays(60);

    /// <summary>True when exactly this was kept under the same id before.</summary>
    public Task<bool> Has(LessonId lesson, LessonForm form, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (form.Send is not { } id) return Task.FromResult(false);
        var content = ContentOf(form);
        return db.SheetSends.AnyAsync(s => s.Id == id && s.LessonId == lesson && s.Content == content, stop);
    }

    /// <summary>Remembers it in the transaction that keeps it, and forgets the lesson's oldest.</summary>
    public async Task Add(LessonId lesson, LessonForm form, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (form.Send is not { } id) return;
        var old = clock.Now - Remembered;
        db.SheetSends.RemoveRange(await db.SheetSends.Where(s => s.LessonId == lesson && s.At < old).ToListAsync(stop));
        db.SheetSends.Add(SheetSend.Of(id, lesson, ContentOf(form), clock.Now));
    }

    private static string ContentOf(LessonForm form) =>
        Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new { Day = form.Heading.HeldOn.ToString("R", null), form.Heading.Club, form.Heading.Kind, form.Entries, form.Observations, form.Notes })));
}
