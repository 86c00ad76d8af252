using CoachOffice.Data.Columns;
using CoachOffice.Domain.Lessons;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons;

internal sealed class ReadingSheetMapping : IEntityTypeConfiguration<ReadingSheet>
{
    public void Configure(EntityTypeBuilder<ReadingSheet> builder)
    {
        builder.ToTable("ReadingSheets");
        builder.Property(s => s.Name).HasMaxLength(ReadingSheet.LongestName);
        builder.Property(s => s.Measures).AsJson();
        builder.HasIndex(s => s.Owner);
    }
}
