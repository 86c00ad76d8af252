using CoachOffice.Domain.FollowUps;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.FollowUps;

internal sealed class MessageWordingMapping : IEntityTypeConfiguration<MessageWording>
{
    public void Configure(EntityTypeBuilder<MessageWording> builder)
    {
        builder.ToTable("MessageWordings");
        builder.Ignore(w => w.Words);
        builder.HasIndex(w => new { w.Kind, w.WrittenAt });
    }
}
