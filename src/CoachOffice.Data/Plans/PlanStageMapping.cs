using CoachOffice.Data.Columns;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Plans;

internal sealed class PlanStageMapping : IEntityTypeConfiguration<PlanStage>
{
    public void Configure(EntityTypeBuilder<PlanStage> builder)
    {
        builder.ToTable("PlanStages");
        builder.Property(s => s.Fault).HasMaxLength(90);
        builder.Property(s => s.Drills).AsJson();
        builder.Property(s => s.Gate).AsJson();
        builder.Ignore(s => s.Content);
    }
}
