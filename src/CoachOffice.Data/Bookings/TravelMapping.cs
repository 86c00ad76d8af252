using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class TravelMapping : IEntityTypeConfiguration<Travel>
{
    public void Configure(EntityTypeBuilder<Travel> builder)
    {
        builder.ToTable("Travels");
        builder.HasOne<Place>().WithMany().HasForeignKey(t => t.OnePlace);
        builder.HasOne<Place>().WithMany().HasForeignKey(t => t.OtherPlace);
        builder.HasIndex(t => new { t.OnePlace, t.OtherPlace }).IsUnique();
    }
}
