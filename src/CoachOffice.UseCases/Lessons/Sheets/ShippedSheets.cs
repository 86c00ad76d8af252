using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>The reading sheets every coach finds: what is read for three purposes (common practice, no source).</summary>
public static class ShippedSheets
{
    /// <summary>First look, set-up, ball and club.</summary>
    public static IReadOnlyList<SheetChoice> All { get; } =
    [
        Of("first-look", "First look at a swing", "address-spine-tilt", "backswing-head-shift", "top-spine-tilt", "downswing-head-shift", "downswing-pelvis-shift", "impact-spine-tilt", "impact-head-behind-ball", "impact-shaft-lean", "shaft-over-plane", "pelvis-toward-ball", "club-path", "face-to-path"),
        Of("set-up", "Set-up only", "address-spine-tilt", "address-forward-bend", "ball-forward-of-centre", "ball-distance", "stance-width", "aim-shoulders", "lead-hand-grip"),
        Of("ball-and-club", "Ball and club numbers", "club-speed", "ball-speed", "attack-angle", "club-path", "face-to-path", "start-direction", "launch-angle", "spin-rate", "carry", "contact-offset-toe", "contact-offset-high"),
    ];

    private static SheetChoice Of(string key, string name, params string[] measures) => new(key, name, [.. measures.Select(MeasureId.From)]);
}
