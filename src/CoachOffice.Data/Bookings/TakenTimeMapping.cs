using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class TakenTimeMapping : IEntityTypeConfiguration<TakenTime>
{
    public void Configure(EntityTypeBuilder<TakenTime> builder)
    {
        builder.ToTable("TakenTimes");
        builder.HasOne<Booking>().WithMany().HasForeignKey(t => t.BookingId);
        builder.HasIndex(t => new { t.Holder, t.From, t.Until });
    }
}
