using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class PlanMapping : IEntityTypeConfiguration<Plan>
{
    public void Configure(EntityTypeBuilder<Plan> builder)
    {
        builder.ToTable("Plans");
        builder.HasMany(p => p.Stages).WithOne().HasForeignKey(s => s.PlanId);
        builder.HasMany(p => p.Changes).WithOne().HasForeignKey(c => c.PlanId);
        builder.Navigation(p => p.Stages).HasField("_stages").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.Navigation(p => p.Changes).HasField("_changes").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.HasOne<Student>().WithMany().HasForeignKey(p => p.StudentId);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(p => p.LessonId);
        builder.HasOne<StoredDraft>().WithMany().HasForeignKey(p => p.DraftId);
        builder.HasIndex(p => p.Status);
    }
}
