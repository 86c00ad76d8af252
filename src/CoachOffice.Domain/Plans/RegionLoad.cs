using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Plans;

/// <summary>A part of the body a drill loads.</summary>
/// <param name="Region">The region.</param>
/// <param name="MoreThanSwing">True when it loads the region more than a normal swing does (written <c>lead-wrist^</c>).</param>
public sealed record RegionLoad(Region Region, bool MoreThanSwing);
