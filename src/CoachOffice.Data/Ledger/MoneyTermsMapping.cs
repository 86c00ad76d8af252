using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class MoneyTermsMapping : IEntityTypeConfiguration<MoneyTerms>
{
    public void Configure(EntityTypeBuilder<MoneyTerms> builder)
    {
        builder.ToTable("MoneyTerms");
        builder.Ignore(t => t.TaxRule);
        builder.Property(t => t.LegalName).HasMaxLength(160);
        builder.Property(t => t.PostalAddress).HasMaxLength(500);
        builder.Property(t => t.TaxNumber).HasMaxLength(40);

        // A practice decides once: the same constant in every row, and it is unique.
        builder.Property<int>("Only").HasDefaultValue(1);
        builder.HasIndex("Only").IsUnique();
    }
}
