using CoachOffice.Data.Columns;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Imports;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Students.Imports;

internal sealed class BroughtStudentMapping : IEntityTypeConfiguration<BroughtStudent>
{
    public void Configure(EntityTypeBuilder<BroughtStudent> builder)
    {
        builder.ToTable("BroughtStudents");
        builder.HasKey(b => new { b.FileId, b.StudentId });
        builder.Property(b => b.Filled).AsJson();
        builder.HasOne<StudentFile>().WithMany().HasForeignKey(b => b.FileId);
        builder.HasOne<Student>().WithMany().HasForeignKey(b => b.StudentId);
    }
}
