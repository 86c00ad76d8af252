using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class BookInForceMapping : IEntityTypeConfiguration<BookInForce>
{
    public void Configure(EntityTypeBuilder<BookInForce> builder)
    {
        builder.ToTable("BooksInForce");
        builder.HasOne<KeptRulebook>().WithMany().HasForeignKey(b => b.Sha256);
        builder.HasOne<RulebookEdition>().WithMany().HasForeignKey(b => b.Edition);
    }
}
