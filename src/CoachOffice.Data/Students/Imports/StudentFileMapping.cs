using CoachOffice.Data.Columns;
using CoachOffice.Domain.Students.Imports;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Students.Imports;

internal sealed class StudentFileMapping : IEntityTypeConfiguration<StudentFile>
{
    private const int HexOfSha256 = 64;

    public void Configure(EntityTypeBuilder<StudentFile> builder)
    {
        builder.ToTable("StudentFiles");
        builder.Ignore(f => f.IsOpen);
        builder.Property(f => f.Name).HasMaxLength(StudentFile.LongestName);
        builder.Property(f => f.Sha256).HasMaxLength(HexOfSha256);
        builder.Property(f => f.BroughtSha256).HasMaxLength(HexOfSha256);
        builder.Property(f => f.Columns).AsJson();
        builder.Property(f => f.Outcome).AsJson();

        // Open and undone lists have no value here, and values that are not there never clash.
        builder.HasIndex(f => f.BroughtSha256).IsUnique();
        builder.HasIndex(f => f.OpenedAt);
    }
}
