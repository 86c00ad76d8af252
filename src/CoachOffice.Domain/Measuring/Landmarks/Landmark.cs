namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>What a coach can point at on a still. The order is that in which one marks: what makes the picture true first, then the body from the ground up, then the club.</summary>
public enum Landmark
{
    /// <summary>Upper end of a plumb line in the picture: it says which way is up.</summary>
    PlumbTop,
    PlumbBottom,

    /// <summary>One end of something whose length is known, lying square to the camera where the swing is.</summary>
    LengthStart,
    LengthEnd,
    Ball,

    /// <summary>Inside of the heel.</summary>
    LeadHeel,
    TrailHeel,

    /// <summary>Outer edge of the hip.</summary>
    LeadHip,
    TrailHip,

    /// <summary>The rearmost point of the seat, seen down the line.</summary>
    Seat,

    /// <summary>Middle of the belt.</summary>
    BeltMiddle,

    /// <summary>Notch at the base of the neck, seen face-on; base of the neck along the back, seen down the line.</summary>
    NeckBase,

    /// <summary>Middle of the skull, the cap not counted.</summary>
    HeadMiddle,

    /// <summary>Outer edge of the shoulder.</summary>
    LeadShoulder,
    TrailShoulder,
    LeadElbow,
    TrailElbow,
    LeadWrist,

    /// <summary>On the straight part of the shaft, at the grip.</summary>
    ShaftHigh,

    /// <summary>On the straight part of the shaft, nearer to the clubhead.</summary>
    ShaftLow,

    /// <summary>End of the grip.</summary>
    ClubButt,

    /// <summary>The point of the thigh nearest to the butt of the club.</summary>
    Thigh,
}
