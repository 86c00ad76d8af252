using CoachOffice.Data.Columns;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class PackageMapping : IEntityTypeConfiguration<Package>
{
    public void Configure(EntityTypeBuilder<Package> builder)
    {
        builder.ToTable("Packages");
        builder.Property(p => p.Name).HasMaxLength(120);
        builder.Property(p => p.Offerings).AsJson();
        builder.HasOne<PackageOffer>().WithMany().HasForeignKey(p => p.OfferId);
        builder.HasOne<Payer>().WithMany().HasForeignKey(p => p.PayerId);
        builder.HasOne<Student>().WithMany().HasForeignKey(p => p.StudentId);
        builder.HasIndex(p => p.ValidUntil);
    }
}
