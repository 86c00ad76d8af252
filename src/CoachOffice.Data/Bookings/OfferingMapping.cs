using CoachOffice.Data.Columns;
using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class OfferingMapping : IEntityTypeConfiguration<Offering>
{
    public void Configure(EntityTypeBuilder<Offering> builder)
    {
        builder.ToTable("Offerings");
        builder.Property(o => o.Name).HasMaxLength(120);
        builder.Property(o => o.Places).AsJson();
        builder.Property(o => o.Coaches).AsJson();
        builder.Property(o => o.Resources).AsJson();
    }
}
