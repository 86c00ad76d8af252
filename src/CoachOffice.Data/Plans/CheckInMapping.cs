using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class CheckInMapping : IEntityTypeConfiguration<CheckIn>
{
    public void Configure(EntityTypeBuilder<CheckIn> builder)
    {
        builder.ToTable("CheckIns");
        builder.HasOne<Student>().WithMany().HasForeignKey(c => c.StudentId);
        builder.HasOne<Plan>().WithMany().HasForeignKey(c => c.PlanId);
        builder.HasIndex(c => new { c.PlanId, c.PracticedOn });
        builder.HasIndex(c => new { c.PracticedOn, c.PlanId });

        // Reports nobody has dealt with: asked for on every first page, and a handful among years of check-ins.
        builder.HasIndex(c => new { c.Emergency, c.At }).HasFilter("\"Pain\" AND \"SeenAt\" IS NULL");
    }
}
