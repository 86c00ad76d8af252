using CoachOffice.Data.Columns;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons.Imports;

internal sealed class DeviceFileMapping : IEntityTypeConfiguration<DeviceFile>
{
    private const int HexOfSha256 = 64;

    public void Configure(EntityTypeBuilder<DeviceFile> builder)
    {
        builder.ToTable("DeviceFiles");
        builder.Ignore(f => f.IsOpen);
        builder.Property(f => f.Name).HasMaxLength(DeviceFile.LongestName);
        builder.Property(f => f.Sha256).HasMaxLength(HexOfSha256);
        builder.Property(f => f.ImportedSha256).HasMaxLength(HexOfSha256);
        builder.Property(f => f.Answers).AsJson();
        builder.Property(f => f.Outcome).AsJson();
        builder.HasOne<Student>().WithMany().HasForeignKey(f => f.StudentId);

        // Open files have no value here, and values that are not there never clash.
        builder.HasIndex(f => new { f.StudentId, f.ImportedSha256 }).IsUnique();
        builder.HasIndex(f => f.OpenedAt);
    }
}
