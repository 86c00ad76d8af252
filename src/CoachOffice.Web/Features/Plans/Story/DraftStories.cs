using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>A draft and its book never change, so what a coach is told of them is put into words once, and forgotten with the draft.</summary>
internal sealed class DraftStories
{
    private readonly ConditionalWeakTable<Draft, ConcurrentDictionary<(Club, UnitSystem), DraftStory>> _told = [];

    public DraftStory Of(DraftView view, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(view);
        return _told.GetOrCreateValue(view.Draft).GetOrAdd((view.Club, units), key => new DraftStory(view.Draft, view.Book, key.Item1, new UnitText(key.Item2)));
    }
}
