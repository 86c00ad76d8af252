using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class BookingSeriesMapping : IEntityTypeConfiguration<BookingSeries>
{
    public void Configure(EntityTypeBuilder<BookingSeries> builder)
    {
        builder.ToTable("BookingSeries");
        builder.Property(s => s.Rule).HasMaxLength(400);
        builder.Property(s => s.Zone).HasMaxLength(60);
    }
}
