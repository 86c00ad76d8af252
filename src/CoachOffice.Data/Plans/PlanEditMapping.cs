using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class PlanEditMapping : IEntityTypeConfiguration<PlanEdit>
{
    public void Configure(EntityTypeBuilder<PlanEdit> builder)
    {
        builder.ToTable("PlanEdits");
        builder.HasOne<Plan>().WithMany().HasForeignKey(e => e.PlanId);
    }
}
