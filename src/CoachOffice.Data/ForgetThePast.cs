namespace CoachOffice.Data;

/// <summary>After a person was erased: drops what the database's own log still holds of them. Copies made before keep what they held.</summary>
public sealed class ForgetThePast
{
    private readonly IDatabaseKeeper _keeper;

    internal ForgetThePast(IDatabaseKeeper keeper) => _keeper = keeper;

    /// <summary>Call after the erasing transaction has been committed.</summary>
    public Task Now(CancellationToken stop) => _keeper.ForgetThePast(stop);
}
