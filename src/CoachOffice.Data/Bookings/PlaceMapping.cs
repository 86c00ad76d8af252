using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class PlaceMapping : IEntityTypeConfiguration<Place>
{
    public void Configure(EntityTypeBuilder<Place> builder)
    {
        builder.ToTable("Places");
        builder.Property(p => p.Name).HasMaxLength(120);
        builder.Property(p => p.Address).HasMaxLength(400);
    }
}
