using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons;

internal sealed class LessonInputMapping : IEntityTypeConfiguration<LessonInput>
{
    public void Configure(EntityTypeBuilder<LessonInput> builder)
    {
        builder.ToTable("LessonInputs");
        builder.HasKey(i => i.LessonId);
        builder.HasOne<Lesson>().WithOne().HasForeignKey<LessonInput>(i => i.LessonId);
        builder.HasOne<Student>().WithMany().HasForeignKey(i => i.StudentId);
    }
}
