using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class ResourceMapping : IEntityTypeConfiguration<Resource>
{
    public void Configure(EntityTypeBuilder<Resource> builder)
    {
        builder.ToTable("Resources");
        builder.Property(r => r.Name).HasMaxLength(120);
        builder.HasOne<Place>().WithMany().HasForeignKey(r => r.PlaceId);
    }
}
