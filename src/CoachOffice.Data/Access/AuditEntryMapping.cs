using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Access;

internal sealed class AuditEntryMapping : IEntityTypeConfiguration<AuditEntry>
{
    public void Configure(EntityTypeBuilder<AuditEntry> builder)
    {
        builder.ToTable("AuditEntries");
        builder.Property(a => a.Action).HasMaxLength(60);
        builder.Property(a => a.Subject).HasMaxLength(40);
        builder.HasIndex(a => a.At);
        builder.HasIndex(a => a.SubjectId);
    }
}
