using CoachOffice.Data.Columns;
using CoachOffice.Domain.Ledger;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Ledger;

internal sealed class PackageOfferMapping : IEntityTypeConfiguration<PackageOffer>
{
    public void Configure(EntityTypeBuilder<PackageOffer> builder)
    {
        builder.ToTable("PackageOffers");
        builder.Property(o => o.Name).HasMaxLength(120);
        builder.Property(o => o.Offerings).AsJson();
    }
}
