using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>An offering's fields as two people who changed them see them.</summary>
internal static class OfferingFields
{
    public static IEnumerable<Difference> Compare(Offering kept, OfferingDetails yours) =>
    [
        new(nameof(yours.Name), "Name", kept.Name, yours.Name.Trim()),
        new(nameof(yours.Kind), "Kind", Terms.Of(kept.Kind), Terms.Of(yours.Kind)),
        new(nameof(yours.PriceMinor), "Price in smallest units", $"{kept.PriceMinor}", $"{yours.PriceMinor}"),
        new(nameof(yours.TaxBasisPoints), "Tax in hundredths of a percent", $"{kept.TaxBasisPoints}", $"{yours.TaxBasisPoints}"),
        new(nameof(yours.Minutes), "Length", $"{kept.Minutes}", $"{yours.Minutes}"),
        new(nameof(yours.BufferMinutes), "Free afterwards", $"{kept.BufferMinutes}", $"{yours.BufferMinutes}"),
        new(nameof(yours.Capacity), "Students", $"{kept.Capacity}", $"{yours.Capacity}"),
        new(nameof(yours.TurnaroundHours), "Answer within hours", $"{kept.TurnaroundHours}", $"{yours.TurnaroundHours}"),
        new(nameof(yours.IsBookable), "Students book it", kept.IsBookable ? "yes" : "no", yours.IsBookable ? "yes" : "no"),
        new(nameof(yours.Places), "Places ticked", $"{kept.Places.Count}", $"{yours.Places.Count}"),
        new(nameof(yours.Coaches), "Coaches ticked", $"{kept.Coaches.Count}", $"{yours.Coaches.Count}"),
        new(nameof(yours.Resources), "Bays ticked", $"{kept.Resources.Count}", $"{yours.Resources.Count}"),
    ];
}
