using CoachOffice.Domain.Lessons.Reviews;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons.Reviews;

internal sealed class ReviewClipMapping : IEntityTypeConfiguration<ReviewClip>
{
    public void Configure(EntityTypeBuilder<ReviewClip> builder)
    {
        builder.ToTable("ReviewClips");
        builder.Property(c => c.Sha256).HasMaxLength(64);
        builder.HasIndex(c => c.Sha256);
    }
}
