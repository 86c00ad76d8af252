using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class LedgerEntryMapping : IEntityTypeConfiguration<LedgerEntry>
{
    public void Configure(EntityTypeBuilder<LedgerEntry> builder)
    {
        builder.ToTable("LedgerEntries");
        builder.Property(e => e.Reference).HasMaxLength(80);
        builder.Property(e => e.Text).HasMaxLength(300);
        builder.HasMany(e => e.Postings).WithOne().HasForeignKey(p => p.EntryId);
        builder.Navigation(e => e.Postings).HasField("_postings").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.HasOne<Payer>().WithMany().HasForeignKey(e => e.PayerId);
        builder.HasOne<Student>().WithMany().HasForeignKey(e => e.StudentId);
        builder.HasOne<Offering>().WithMany().HasForeignKey(e => e.OfferingId);
        builder.HasOne<Seat>().WithMany().HasForeignKey(e => e.SeatId);
        builder.HasOne<Package>().WithMany().HasForeignKey(e => e.PackageId);
        builder.HasOne<LedgerEntry>().WithMany().HasForeignKey(e => e.Reverses);

        // Each is taken back once at most, whoever tries at the same moment.
        builder.HasIndex(e => e.Reverses).IsUnique();
        builder.HasIndex(e => new { e.PayerId, e.On });
        builder.HasIndex(e => e.On);
    }
}
