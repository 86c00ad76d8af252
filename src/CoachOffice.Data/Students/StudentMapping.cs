using CoachOffice.Data.Columns;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Students;

internal sealed class StudentMapping : IEntityTypeConfiguration<Student>
{
    public void Configure(EntityTypeBuilder<Student> builder)
    {
        builder.ToTable("Students");
        builder.Property(s => s.GivenName).HasMaxLength(120);
        builder.Property(s => s.FamilyName).HasMaxLength(120);
        builder.Property(s => s.Email).HasMaxLength(254);
        builder.Property(s => s.Guardian).AsJson();
        builder.Property(s => s.Goals).AsJson();
        builder.Property(s => s.Contact).AsJson();
        builder.Property(s => s.Kit).AsJson();
        builder.Property(s => s.Limits).AsJson();
        builder.Ignore(s => s.FullName);
        builder.HasOne<Student>().WithMany().HasForeignKey(s => s.MergedInto);
        builder.HasOne<Payer>().WithMany().HasForeignKey(s => s.PayerId);

        // Lists are sorted by it too: one order on every database. With these columns a search reads the index alone until it has its page; the narrow one counts.
        builder.HasIndex(s => new { s.ArchivedAt, s.SearchText, s.Id });
        builder.HasIndex(s => s.ArchivedAt);
    }
}
