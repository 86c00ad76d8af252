using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Access;

internal sealed class PrivateLinkMapping : IEntityTypeConfiguration<PrivateLink>
{
    public void Configure(EntityTypeBuilder<PrivateLink> builder)
    {
        builder.ToTable("PrivateLinks");
        builder.Property(l => l.TokenSha256).HasMaxLength(64);
        builder.HasIndex(l => l.TokenSha256).IsUnique();
        builder.HasOne<Student>().WithMany().HasForeignKey(l => l.StudentId);
        builder.HasOne<Plan>().WithMany().HasForeignKey(l => l.PlanId);
    }
}
