using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class WaitingPlaceMapping : IEntityTypeConfiguration<WaitingPlace>
{
    public void Configure(EntityTypeBuilder<WaitingPlace> builder)
    {
        builder.ToTable("WaitingPlaces");
        builder.HasOne<Student>().WithMany().HasForeignKey(w => w.StudentId);
        builder.HasOne<Offering>().WithMany().HasForeignKey(w => w.OfferingId);
        builder.HasOne<Booking>().WithMany().HasForeignKey(w => w.BookingId);
        builder.HasOne<Seat>().WithMany().HasForeignKey(w => w.OfferedSeat);
        builder.HasIndex(w => new { w.Status, w.JoinedAt });
    }
}
