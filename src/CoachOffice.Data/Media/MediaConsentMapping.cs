using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Media;

internal sealed class MediaConsentMapping : IEntityTypeConfiguration<MediaConsent>
{
    public void Configure(EntityTypeBuilder<MediaConsent> builder)
    {
        builder.ToTable("MediaConsents");
        builder.Property(c => c.GivenBy).HasMaxLength(120);
        builder.HasOne<Student>().WithMany().HasForeignKey(c => c.StudentId);
    }
}
