using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Students;

internal sealed class GroupMemberMapping : IEntityTypeConfiguration<GroupMember>
{
    public void Configure(EntityTypeBuilder<GroupMember> builder)
    {
        builder.ToTable("GroupMembers");
        builder.HasKey(m => new { m.GroupId, m.StudentId });
        builder.HasOne<Student>().WithMany().HasForeignKey(m => m.StudentId);
    }
}
