using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.FollowUps;

internal sealed class MessageMapping : IEntityTypeConfiguration<Message>
{
    public void Configure(EntityTypeBuilder<Message> builder)
    {
        builder.ToTable("Messages");
        builder.Property(m => m.OnceKey).HasMaxLength(200);
        builder.Ignore(m => m.StableName);
        builder.HasIndex(m => m.OnceKey).IsUnique();
        builder.HasIndex(m => new { m.State, m.DueAt });

        // The order of the claim, so that it reads no more of what is due than it takes.
        builder.HasIndex(m => new { m.State, m.Attempts, m.DueAt, m.Id });

        // Who has been silent through two encouragements is asked on every first page: each index answers its half alone.
        builder.HasIndex(m => new { m.Kind, m.State, m.DueAt, m.PlanId });
        builder.HasIndex(m => new { m.PlanId, m.Kind, m.State, m.SentAt });
        builder.HasOne<Student>().WithMany().HasForeignKey(m => m.StudentId);
        builder.HasOne<Plan>().WithMany().HasForeignKey(m => m.PlanId);
    }
}
