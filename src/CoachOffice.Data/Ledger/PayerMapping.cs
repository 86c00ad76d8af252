using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class PayerMapping : IEntityTypeConfiguration<Payer>
{
    public void Configure(EntityTypeBuilder<Payer> builder)
    {
        builder.ToTable("Payers");
        builder.Property(p => p.Name).HasMaxLength(250);
        builder.Property(p => p.Email).HasMaxLength(254);
        builder.Property(p => p.PostalAddress).HasMaxLength(500);
        builder.HasIndex(p => new { p.Name, p.Id });
    }
}
