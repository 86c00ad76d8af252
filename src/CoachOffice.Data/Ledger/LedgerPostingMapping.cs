using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class LedgerPostingMapping : IEntityTypeConfiguration<LedgerPosting>
{
    public void Configure(EntityTypeBuilder<LedgerPosting> builder)
    {
        builder.ToTable("LedgerPostings");
        builder.HasKey(p => new { p.EntryId, p.Line });
        builder.Property(p => p.Text).HasMaxLength(120);
        builder.Ignore(p => p.Rate);

        // Sums by account read the index alone.
        builder.HasIndex(p => new { p.Account, p.EntryId, p.AmountMinor });
    }
}
