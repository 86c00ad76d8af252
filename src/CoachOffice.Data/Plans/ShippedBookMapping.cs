using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class ShippedBookMapping : IEntityTypeConfiguration<ShippedBook>
{
    public void Configure(EntityTypeBuilder<ShippedBook> builder)
    {
        builder.ToTable("ShippedBooks");
        builder.HasKey(b => b.Sha256);
        builder.Property(b => b.Sha256).HasMaxLength(64);
    }
}
