using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Access;

internal sealed class PracticeMapping : IEntityTypeConfiguration<Practice>
{
    public void Configure(EntityTypeBuilder<Practice> builder)
    {
        builder.ToTable("Practices");
        builder.Property(p => p.Name).HasMaxLength(120);
        builder.Property(p => p.Zone).HasMaxLength(64);
        builder.Property(p => p.Currency).HasMaxLength(3);

        // A database holds one practice: the same constant in every row, and it is unique. Two first runs at once give one.
        builder.Property<int>("Only").HasDefaultValue(1);
        builder.HasIndex("Only").IsUnique();
    }
}
