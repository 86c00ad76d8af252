using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons;

internal sealed class LessonMapping : IEntityTypeConfiguration<Lesson>
{
    public void Configure(EntityTypeBuilder<Lesson> builder)
    {
        builder.ToTable("Lessons");
        builder.Ignore(l => l.Readings);
        builder.HasMany(l => l.AllReadings).WithOne().HasForeignKey(r => r.LessonId);
        builder.Navigation(l => l.AllReadings).HasField("_readings").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.HasMany(l => l.Takes).WithOne().HasForeignKey(t => t.LessonId);
        builder.Navigation(l => l.Takes).HasField("_takes").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.Property(l => l.Sheet).HasMaxLength(40);
        builder.HasOne<Student>().WithMany().HasForeignKey(l => l.StudentId);
        builder.HasIndex(l => new { l.StudentId, l.HeldOn });
        builder.HasIndex(l => l.HeldOn);

        // A coach's next lesson is read by the sheet of the one before.
        builder.HasIndex(l => new { l.CoachId, l.CreatedAt });
    }
}
