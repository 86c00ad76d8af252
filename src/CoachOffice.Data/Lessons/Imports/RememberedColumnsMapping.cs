using CoachOffice.Data.Columns;
using CoachOffice.Domain.Lessons.Imports;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons.Imports;

internal sealed class RememberedColumnsMapping : IEntityTypeConfiguration<RememberedColumns>
{
    private const int HexOfSha256 = 64;

    public void Configure(EntityTypeBuilder<RememberedColumns> builder)
    {
        builder.ToTable("RememberedColumns");
        builder.HasKey(c => c.HeaderSha256);
        builder.Property(c => c.HeaderSha256).HasMaxLength(HexOfSha256);
        builder.Property(c => c.Mapping).AsJson();
    }
}
