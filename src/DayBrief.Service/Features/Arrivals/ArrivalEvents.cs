namespace DayBrief.Service.Features.Arrivals;

/// <summary>Tells whoever listens (mail, webhooks) what has been noticed by itself; each once. Listeners do not throw and do
/// not wait: they put their work into a queue.</summary>
internal sealed class ArrivalEvents
{
    public event Action<Reminder>? Reminded;

    public event Action<Flag>? Flagged;

    public void Raise(Reminder reminder) => Reminded?.Invoke(reminder);

    public void Raise(Flag flag) => Flagged?.Invoke(flag);
}
