using CoachOffice.Data.Columns;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Measuring;

internal sealed class SecondReadingMapping : IEntityTypeConfiguration<SecondReading>
{
    public void Configure(EntityTypeBuilder<SecondReading> builder)
    {
        builder.ToTable("SecondReadings");
        builder.Property(s => s.Doubles).AsJson();
        builder.Ignore(s => s.IsSameReader);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(s => s.LessonId);
        builder.HasOne<Take>().WithMany().HasForeignKey(s => s.TakeId);
        builder.HasIndex(s => s.ReadAt);
    }
}
