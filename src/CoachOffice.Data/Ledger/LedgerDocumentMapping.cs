using CoachOffice.Data.Columns;
using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class LedgerDocumentMapping : IEntityTypeConfiguration<LedgerDocument>
{
    public void Configure(EntityTypeBuilder<LedgerDocument> builder)
    {
        builder.ToTable("LedgerDocuments");
        builder.Ignore(d => d.Name);
        builder.Property(d => d.Content).AsJson();
        builder.HasOne<Payer>().WithMany().HasForeignKey(d => d.PayerId);
        builder.HasOne<LedgerEntry>().WithMany().HasForeignKey(d => d.EntryId);
        builder.HasIndex(d => new { d.Kind, d.Year, d.Number }).IsUnique();

        // One receipt for one payment.
        builder.HasIndex(d => d.EntryId).IsUnique();
    }
}
