using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class WeeklyHoursMapping : IEntityTypeConfiguration<WeeklyHours>
{
    public void Configure(EntityTypeBuilder<WeeklyHours> builder)
    {
        builder.ToTable("WeeklyHours");
        builder.HasOne<Place>().WithMany().HasForeignKey(h => h.PlaceId);
        builder.HasIndex(h => h.CoachId);
    }
}
