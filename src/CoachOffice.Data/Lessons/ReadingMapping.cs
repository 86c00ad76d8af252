using CoachOffice.Domain.Lessons;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons;

internal sealed class ReadingMapping : IEntityTypeConfiguration<Reading>
{
    public void Configure(EntityTypeBuilder<Reading> builder)
    {
        builder.ToTable("Readings");
        builder.Property(r => r.Measure).HasMaxLength(80);
        builder.HasOne<Take>().WithMany().HasForeignKey(r => r.TakeId);

        // Which lessons hold a value beyond an edge is answered from the index alone.
        builder.HasIndex(r => new { r.Measure, r.Value, r.LessonId });
    }
}
