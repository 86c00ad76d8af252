using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.FollowUps;

internal sealed class MailBounceMapping : IEntityTypeConfiguration<MailBounce>
{
    public void Configure(EntityTypeBuilder<MailBounce> builder)
    {
        builder.ToTable("MailBounces");
        builder.Property(b => b.AddressSha256).HasMaxLength(64);
        builder.Property(b => b.Status).HasMaxLength(11);
        builder.Property(b => b.OnceKey).HasMaxLength(120);
        builder.HasIndex(b => b.OnceKey).IsUnique();
        builder.HasIndex(b => b.IsHard);
        builder.HasOne<Message>().WithMany().HasForeignKey(b => b.MessageId);
        builder.HasOne<Student>().WithMany().HasForeignKey(b => b.StudentId);
    }
}
