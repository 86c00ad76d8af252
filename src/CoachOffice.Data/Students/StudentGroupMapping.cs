using CoachOffice.Domain.Students.Groups;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Students;

internal sealed class StudentGroupMapping : IEntityTypeConfiguration<StudentGroup>
{
    public void Configure(EntityTypeBuilder<StudentGroup> builder)
    {
        builder.ToTable("StudentGroups");
        builder.Property(g => g.Name).HasMaxLength(StudentGroup.LongestName);
        builder.HasMany(g => g.Members).WithOne().HasForeignKey(m => m.GroupId);
        builder.Navigation(g => g.Members).HasField("_members").UsePropertyAccessMode(PropertyAccessMode.Field);
    }
}
