namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>The three things booking needs, in the order they are made.</summary>
public sealed record SetUpState(bool HasPlace, bool HasOffering, bool HasHours)
{
    public bool IsReady => HasPlace && HasOffering && HasHours;
}
