using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>What one camera view, or a device, showed: what is off first, what is fine folded away.</summary>
internal sealed record SeenView(View View, IReadOnlyList<SeenLine> Off, IReadOnlyList<SeenLine> Fine);
