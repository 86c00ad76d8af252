using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class KeptRulebookMapping : IEntityTypeConfiguration<KeptRulebook>
{
    public void Configure(EntityTypeBuilder<KeptRulebook> builder)
    {
        builder.ToTable("KeptRulebooks");
        builder.HasKey(b => b.Sha256);
        builder.Property(b => b.Sha256).HasMaxLength(64);
        builder.HasOne<ShippedBook>().WithMany().HasForeignKey(b => b.ShippedSha256);
    }
}
