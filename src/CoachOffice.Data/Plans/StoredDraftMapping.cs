using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class StoredDraftMapping : IEntityTypeConfiguration<StoredDraft>
{
    public void Configure(EntityTypeBuilder<StoredDraft> builder)
    {
        builder.ToTable("StoredDrafts");
        builder.Property(d => d.InputSha256).HasMaxLength(64);
        builder.HasOne<Student>().WithMany().HasForeignKey(d => d.StudentId);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(d => d.LessonId);
        builder.HasOne<KeptRulebook>().WithMany().HasForeignKey(d => d.RulebookSha256);
    }
}
