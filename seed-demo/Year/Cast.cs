using CoachOffice.Domain.Access;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Who works at the academy: the owner who opened it, two invented coaches and the desk.</summary>
internal sealed record Cast(Actor Owner, Actor First, Actor Second, Actor Desk);
