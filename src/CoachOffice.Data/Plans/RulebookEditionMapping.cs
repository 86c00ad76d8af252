using CoachOffice.Data.Columns;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class RulebookEditionMapping : IEntityTypeConfiguration<RulebookEdition>
{
    public void Configure(EntityTypeBuilder<RulebookEdition> builder)
    {
        builder.ToTable("RulebookEditions");
        builder.HasKey(e => e.Number);
        builder.Property(e => e.Changes).AsJson();
        builder.HasOne<KeptRulebook>().WithMany().HasForeignKey(e => e.Sha256);
        builder.HasOne<ShippedBook>().WithMany().HasForeignKey(e => e.ShippedSha256);
    }
}
