using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Tests.Measuring;

/// <summary>61 to 83 % of the way from path to face: Wood, Henrikson and Broadie (2018).</summary>
public sealed class StartDirectionTests
{
    [Theory]
    [InlineData(0, 10, 6.1, 8.3)]
    [InlineData(-6, 10, 0.1, 2.3)]
    [InlineData(4, -10, -4.3, -2.1)]
    [InlineData(3, 0, 3, 3)]
    public void A_ball_starts_between_path_and_face_nearer_the_face(double path, double faceToPath, double low, double high)
    {
        var range = StartDirectionRange.Of(new Quantity(path, Unit.Degree), new Quantity(faceToPath, Unit.Degree));

        Assert.Equal(low, range.Low!.Value, 9);
        Assert.Equal(high, range.High!.Value, 9);
    }

    /// <summary>Two bodies that meet: ball over club speed = (1 + e) / (1 + m/M). With the most the equipment rules allow (e 0.830, ball 45.93 g) and a head of 200 g (common practice, no source) that is 1.488, below the 1.51 from which the device is doubted.</summary>
    [Fact]
    public void No_conforming_strike_reaches_what_is_doubted()
    {
        var most = (1 + 0.830) / (1 + 45.93 / 200);

        Assert.Equal(1.488, most, 3);
        Assert.True(most < 1.51);
    }
}
