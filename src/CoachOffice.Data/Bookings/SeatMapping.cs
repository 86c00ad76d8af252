using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class SeatMapping : IEntityTypeConfiguration<Seat>
{
    public void Configure(EntityTypeBuilder<Seat> builder)
    {
        builder.ToTable("Seats");
        builder.Ignore(s => s.Counts);
        builder.Ignore(s => s.IsOpen);
        builder.HasOne<Student>().WithMany().HasForeignKey(s => s.StudentId);
        builder.HasOne<Package>().WithMany().HasForeignKey(s => s.PackageId);
        builder.HasIndex(s => s.PackageId).HasFilter("\"PackageId\" IS NOT NULL");
        builder.HasIndex(s => s.HeldUntil).HasFilter("\"HeldUntil\" IS NOT NULL");
    }
}
