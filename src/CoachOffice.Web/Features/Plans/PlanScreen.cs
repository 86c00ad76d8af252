using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;
using CoachOffice.Web.Features.Plans.Story;
using CoachOffice.Web.Shell.Wording;
using NodaTime;

namespace CoachOffice.Web.Features.Plans;

/// <summary>A plan as the coach's page shows it: the draft it came from and what became of it.</summary>
internal sealed record PlanScreen
{
    public required DraftView Draft { get; init; }

    /// <summary>Its life since it was approved; null for a draft.</summary>
    public PlanView? Life { get; init; }

    public required UnitText Units { get; init; }

    public DateTimeZone Zone { get; init; } = DateTimeZone.Utc;

    public LocalDate Today { get; init; }

    /// <summary>What was just typed into a form that was refused; null otherwise.</summary>
    public PlanPost? Posted { get; init; }

    /// <summary>The one form that was asked for, by its id; every form in the page at once would be most of it.</summary>
    public string? Open { get; init; }

    public required DraftStory Story { get; init; }

    /// <summary>What was typed about this drill, when its form was refused.</summary>
    public PlanPost? PostedOn(StageView stage, string drill) => Posted is { } post && post.StageId == stage.Id && post.Drill == drill ? post : null;

    public bool IsOpen(StageView stage, string drill) => Open == DrillForm(stage, drill) || PostedOn(stage, drill) is not null;

    public bool IsMoving(StageView stage) => Open == MoveForm(stage) || (Posted is { Way: not null } post && post.StageId == stage.Id);

    public bool IsOpening(StageView stage) => Open == GateForm(stage) || (Posted is { Because: not null } post && post.StageId == stage.Id);

    public static string DrillForm(StageView stage, string drill) => $"drill-{stage.Id:N}-{drill}";

    public static string MoveForm(StageView stage) => $"move-{stage.Id:N}";

    public static string GateForm(StageView stage) => $"gate-{stage.Id:N}";

    /// <summary>This page with a form in its place.</summary>
    public string WithForm(string form) => $"/plans/{Draft.Id.Value}?open={form}#{form}";

    public IReadOnlyList<WorkCard> Cards => field ??= new WorkCards(Story, Stages, Draft.Edits).All();

    public IReadOnlyList<StageView> Stages => Life?.Stages ?? Draft.Stages;

    public int Version => Life?.Version ?? Draft.Version;

    public PlanStatus Status => Life?.Status ?? Draft.Status;

    public bool IsDraft => Status == PlanStatus.Draft;

    public bool MayEdit => Status is PlanStatus.Draft or PlanStatus.Active or PlanStatus.OnHold;

    public bool MaySteer => Status == PlanStatus.Active;

    /// <summary>Where a form of this page posts to.</summary>
    public string Address(string step) => $"/plans/{Draft.Id.Value}?do={step}";

    public bool IsLast(StageView stage) => Stages.Where(s => s.Fault == stage.Fault).Max(s => s.Order) == stage.Order;
}
