using CoachOffice.Domain.Lessons;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons;

internal sealed class SheetSendMapping : IEntityTypeConfiguration<SheetSend>
{
    public void Configure(EntityTypeBuilder<SheetSend> builder)
    {
        builder.ToTable("SheetSends");
        builder.HasKey(s => new { s.Id, s.Content });
        builder.Property(s => s.Content).HasMaxLength(64);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(s => s.LessonId);
        builder.HasIndex(s => s.At);
    }
}
