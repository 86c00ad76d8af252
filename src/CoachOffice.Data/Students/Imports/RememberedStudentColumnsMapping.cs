using CoachOffice.Data.Columns;
using CoachOffice.Domain.Students.Imports;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Students.Imports;

internal sealed class RememberedStudentColumnsMapping : IEntityTypeConfiguration<RememberedStudentColumns>
{
    private const int HexOfSha256 = 64;

    public void Configure(EntityTypeBuilder<RememberedStudentColumns> builder)
    {
        builder.ToTable("RememberedStudentColumns");
        builder.HasKey(c => c.HeaderSha256);
        builder.Property(c => c.HeaderSha256).HasMaxLength(HexOfSha256);
        builder.Property(c => c.Columns).AsJson();
    }
}
