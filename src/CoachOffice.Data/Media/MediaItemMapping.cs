using CoachOffice.Data.Columns;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Media;

internal sealed class MediaItemMapping : IEntityTypeConfiguration<MediaItem>
{
    public void Configure(EntityTypeBuilder<MediaItem> builder)
    {
        builder.ToTable("MediaItems");
        builder.Property(m => m.Sha256).HasMaxLength(64);
        builder.Property(m => m.SmallSha256).HasMaxLength(64);
        builder.Property(m => m.Marks).AsJson();
        builder.HasOne<Take>().WithMany().HasForeignKey(m => m.TakeId);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(m => m.LessonId);
        builder.HasOne<Student>().WithMany().HasForeignKey(m => m.StudentId);

        // Whether any row still needs a file is asked by its hash.
        builder.HasIndex(m => m.Sha256);
        builder.HasIndex(m => m.SmallSha256);
    }
}
