using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data;

/// <summary>Saving with the expected "no" of a database as a value.</summary>
public static class Saving
{
    /// <summary>Saves; says when someone else saved the same row meanwhile or the same thing was there already. The context is not to be used further then.</summary>
    public static async Task<Saved> TrySave(this OfficeDb db, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(db);
        try
        {
            await db.SaveChangesAsync(stop);
            return Saved.Yes;
        }
        catch (DbUpdateConcurrencyException)
        {
            return Saved.ChangedMeanwhile;
        }
        catch (DbUpdateException fault) when (DatabaseFaults.IsDuplicate(fault))
        {
            return Saved.WasThere;
        }
        catch (DbUpdateException fault) when (DatabaseFaults.IsTimeTaken(fault))
        {
            return Saved.TimeTaken;
        }
    }
}
