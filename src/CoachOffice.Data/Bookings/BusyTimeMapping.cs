using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class BusyTimeMapping : IEntityTypeConfiguration<BusyTime>
{
    public void Configure(EntityTypeBuilder<BusyTime> builder)
    {
        builder.ToTable("BusyTimes");
        builder.Property(b => b.Source).HasMaxLength(120);
        builder.HasIndex(b => new { b.CoachId, b.Until, b.From });
    }
}
