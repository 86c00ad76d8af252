using CoachOffice.Data.Columns;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Measuring;

internal sealed class RetestMapping : IEntityTypeConfiguration<Retest>
{
    public void Configure(EntityTypeBuilder<Retest> builder)
    {
        builder.ToTable("Retests");
        builder.Property(r => r.Fault).HasMaxLength(90);
        builder.Property(r => r.Answer).HasMaxLength(400);
        builder.Property(r => r.Verdict).AsJson();
        builder.HasOne<Student>().WithMany().HasForeignKey(r => r.StudentId);
        builder.HasOne<Plan>().WithMany().HasForeignKey(r => r.PlanId);
        builder.HasOne<PlanStage>().WithMany().HasForeignKey(r => r.StageId);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(r => r.LessonId);
        builder.HasIndex(r => new { r.Status, r.DueOn });
    }
}
