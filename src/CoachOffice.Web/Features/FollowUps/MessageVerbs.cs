using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>What a coach can do with one message, for the pages that show messages.</summary>
public sealed class MessageVerbs(SkipMessage skip, SendMessageNow send, MoveMessage move, ApproveMessages approve, MessageArrived arrived)
{
    public Task<Outcome<Guid>> Skip(Guid id, string? why, Actor actor) => skip.Now(id, why ?? "", actor);

    public Task<Outcome<Guid>> Send(Guid id, Actor actor) => send.Now(id, actor);

    public Task<Outcome<Guid>> Move(Guid id, LocalDate day, Actor actor, LocalTime? time = null) => move.To(id, day, time, actor);

    public Task<Outcome<Guid>> Approve(Guid id, Actor actor) => approve.One(id, actor);

    public Task<Outcome<int>> ApproveAll(MessageKind? kind, Actor actor) => approve.All(kind, actor);

    public Task<Outcome<Guid>> Arrived(Guid id, Actor actor) => arrived.Say(id, actor);
}
