using CoachOffice.Domain.Safekeeping;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Safekeeping;

internal sealed class SafetyCopyMapping : IEntityTypeConfiguration<SafetyCopy>
{
    public void Configure(EntityTypeBuilder<SafetyCopy> builder)
    {
        builder.ToTable("SafetyCopies");
        builder.HasKey(c => c.Id);
        builder.Property(c => c.By).HasMaxLength(120);
        builder.Property(c => c.Place).HasMaxLength(60);
        builder.Property(c => c.Problem).HasMaxLength(500);
        builder.HasIndex(c => c.At);
    }
}
