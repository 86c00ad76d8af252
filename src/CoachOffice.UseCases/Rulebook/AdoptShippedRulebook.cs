using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Takes the rulebook that came with the program into force, once for each edition: one this practice had before is not taken again, so starting an older program changes nothing.</summary>
public sealed class AdoptShippedRulebook(OfficeDb db, ShippedRules shipped, IClock clock)
{
    private const string By = "the program";

    /// <summary>The book in force, or every fault of the shipped files; a book in force before stays so then.</summary>
    public async Task<Outcome<AdoptedBook>> AtStartUp(CancellationToken stop = default)
    {
        var text = RulebookText.FromDirectory(shipped.Directory);
        if (!text.TryGet(out var files)) return Refused(text.Faults);
        var inForce = await db.BooksInForce.SingleOrDefaultAsync(stop);
        if (inForce is not null && await IsKept(files, stop)) return new AdoptedBook(inForce.Sha256, false);
        var read = RulebookReader.Load(files);
        if (!read.TryGet(out var loaded)) return Refused(read.Faults);
        if (inForce is not null && await db.KeptRulebooks.AnyAsync(b => b.Sha256 == loaded.Sha256, stop)) return new AdoptedBook(inForce.Sha256, false);
        await Adopt(loaded, inForce, stop);
        return new AdoptedBook(loaded.Sha256, true);
    }

    /// <summary>The very same files, which need not be read and checked again at every start.</summary>
    private Task<bool> IsKept(RulebookText files, CancellationToken stop)
    {
        var bundle = files.Bundle();
        return db.KeptRulebooks.AnyAsync(b => b.Text == bundle, stop);
    }

    private async Task Adopt(LoadedRulebook loaded, BookInForce? inForce, CancellationToken stop)
    {
        var now = clock.GetCurrentInstant();
        if (!await db.KeptRulebooks.AnyAsync(b => b.Sha256 == loaded.Sha256, stop)) db.KeptRulebooks.Add(new KeptRulebook(loaded.Sha256, loaded.Text.Bundle(), now));
        if (inForce is null) db.BooksInForce.Add(BookInForce.First(loaded.Sha256, By, now));
        else inForce.Adopt(loaded.Sha256, By, now);

        // Another node that starts at the same moment may have been first with the very same book: then there is nothing left to do.
        await db.TrySave(stop);
    }

    private static Outcome<AdoptedBook> Refused(IReadOnlyList<Fault> faults) =>
        Outcome<AdoptedBook>.Refused([.. faults.Select(f => new Refusal("rulebook-faulty", f.ToString()))]);
}
