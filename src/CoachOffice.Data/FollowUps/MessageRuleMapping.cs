using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.FollowUps;

internal sealed class MessageRuleMapping : IEntityTypeConfiguration<MessageRule>
{
    public void Configure(EntityTypeBuilder<MessageRule> builder)
    {
        builder.ToTable("MessageRules");
        builder.HasIndex(r => r.Kind).IsUnique();
        builder.HasOne<MessageWording>().WithMany().HasForeignKey(r => r.WordingId);
    }
}
