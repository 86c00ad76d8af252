using CoachOffice.Domain.Lessons;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons;

internal sealed class TakeMapping : IEntityTypeConfiguration<Take>
{
    public void Configure(EntityTypeBuilder<Take> builder)
    {
        builder.ToTable("Takes");

        // Two saves at once must not make two takes of one swing.
        builder.HasIndex(t => new { t.LessonId, t.View, t.Swing }).IsUnique();
    }
}
