using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class BookingMapping : IEntityTypeConfiguration<Booking>
{
    public void Configure(EntityTypeBuilder<Booking> builder)
    {
        builder.ToTable("Bookings");
        builder.Ignore(b => b.Time);
        builder.Ignore(b => b.Where);
        builder.Property(b => b.Zone).HasMaxLength(60);
        builder.Property(b => b.Note).HasMaxLength(2000);
        builder.HasMany(b => b.Seats).WithOne().HasForeignKey(s => s.BookingId);
        builder.Navigation(b => b.Seats).HasField("_seats").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.HasOne<Offering>().WithMany().HasForeignKey(b => b.OfferingId);
        builder.HasOne<Place>().WithMany().HasForeignKey(b => b.PlaceId);
        builder.HasOne<Resource>().WithMany().HasForeignKey(b => b.ResourceId);
        builder.HasOne<BookingSeries>().WithMany().HasForeignKey(b => b.SeriesId);

        // A week of the calendar, of some coaches or of all.
        builder.HasIndex(b => new { b.Starts, b.CoachId });
        builder.HasIndex(b => new { b.CoachId, b.Starts });

        // What is held and runs out: few rows at any time.
        builder.HasIndex(b => b.HeldUntil).HasFilter("\"HeldUntil\" IS NOT NULL");
    }
}
