using CoachOffice.Domain;

namespace CoachOffice.UseCases;

/// <summary>The same row of identifiers at every run, for the demo practice and tests.</summary>
public sealed class SeededIds(int seed) : INewIds
{
#pragma warning disable RS0030 // Seeded: chance comes in through the parameter.
    private readonly Random _chance = new(seed);
#pragma warning restore RS0030
    private readonly Lock _one = new();

    /// <inheritdoc/>
    public Guid Next()
    {
        Span<byte> bytes = stackalloc byte[16];
        lock (_one) _chance.NextBytes(bytes);
        bytes[7] = (byte)((bytes[7] & 0x0F) | 0x40);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes);
    }
}
