using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Lessons.Reviews;

internal sealed class RemoteReviewMapping : IEntityTypeConfiguration<RemoteReview>
{
    public void Configure(EntityTypeBuilder<RemoteReview> builder)
    {
        builder.ToTable("RemoteReviews");
        builder.Ignore(r => r.IsOpen);
        builder.Property(r => r.Zone).HasMaxLength(60);
        builder.Property(r => r.BallFlight).HasMaxLength(ReviewWords.Longest);
        builder.Property(r => r.Felt).HasMaxLength(ReviewWords.Longest);
        builder.Property(r => r.Numbers).HasMaxLength(ReviewWords.Longest);
        builder.HasMany(r => r.Clips).WithOne().HasForeignKey(c => c.ReviewId);
        builder.Navigation(r => r.Clips).HasField("_clips").UsePropertyAccessMode(PropertyAccessMode.Field);
        builder.HasOne<Student>().WithMany().HasForeignKey(r => r.StudentId);
        builder.HasOne<Offering>().WithMany().HasForeignKey(r => r.OfferingId);
        builder.HasOne<Lesson>().WithMany().HasForeignKey(r => r.LessonId);

        // The queue is read by promise; what is answered leaves it.
        builder.HasIndex(r => new { r.Status, r.PromisedBy });
    }
}
