using CoachOffice.Data.Columns;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class RulebookWorkMapping : IEntityTypeConfiguration<RulebookWork>
{
    public void Configure(EntityTypeBuilder<RulebookWork> builder)
    {
        builder.ToTable("RulebookWorks");
        builder.HasKey(w => w.Account);
        builder.Property(w => w.Edits).AsJson();
        builder.Property(w => w.Dropped).AsJson();
    }
}
