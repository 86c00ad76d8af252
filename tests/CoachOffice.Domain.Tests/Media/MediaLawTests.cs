using CoachOffice.Domain.Access;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Media;

public sealed class MediaLawTests
{
    private static readonly LocalDate Today = new(2026, 11, 26);
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 9, 0);

    [Theory]
    [InlineData(2008, 11, 27, MediaPermission.Missing)]
    [InlineData(2008, 11, 26, MediaPermission.Given)]
    public void A_minor_needs_consent_up_to_the_eighteenth_birthday(int year, int month, int day, MediaPermission permission) =>
        Assert.Equal(permission, MediaLaw.On(Born(new LocalDate(year, month, day)), null, Today));

    [Fact]
    public void Whoever_never_told_an_age_counts_as_grown_up() => Assert.Equal(MediaPermission.Given, MediaLaw.On(Born(null), null, Today));

    [Fact]
    public void Consent_holds_until_it_is_withdrawn_and_coming_of_age_does_not_give_it_back()
    {
        var consent = MediaConsent.Give(new Guid(1, 0, 0, new byte[8]), StudentId.From(new Guid(2, 0, 0, new byte[8])), " Mara Oduya ", Today, Account(3), Now);
        var child = Born(new LocalDate(2012, 1, 1));
        Assert.Equal(("Mara Oduya", MediaPermission.Given), (consent.GivenBy, MediaLaw.On(child, consent, Today)));

        consent.Withdraw(Account(4), Now);
        consent.Withdraw(Account(5), Now + Duration.FromDays(1));

        Assert.Equal((Now, Account(4)), (consent.WithdrawnAt!.Value, consent.WithdrawnBy!.Value));
        Assert.Equal(MediaPermission.Withdrawn, MediaLaw.On(child, consent, Today));
        Assert.Equal(MediaPermission.Withdrawn, MediaLaw.On(child, consent, Today.PlusYears(10)));
    }

    private static AccountId Account(int number) => AccountId.From(new Guid(number, 0, 0, new byte[8]));

    private static Student Born(LocalDate? day) => Student.Register(
        StudentId.From(new Guid(2, 0, 0, new byte[8])),
        new StudentDetails { GivenName = "Tomi", FamilyName = "Oduya", BirthDate = day, Hand = Hand.Right, Level = Level.Improver, Room = Room.Range, MinutesPerWeek = 60, DaysPerWeek = 2 },
        Now);
}
