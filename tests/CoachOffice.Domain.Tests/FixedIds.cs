namespace CoachOffice.Domain.Tests;

/// <summary>Ids that count up from one.</summary>
internal sealed class FixedIds : INewIds
{
    private int _last;

    /// <summary>The id with this number.</summary>
    public static Guid Of(int number) => new(number, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]);

    /// <inheritdoc/>
    public Guid Next() => Of(++_last);
}
