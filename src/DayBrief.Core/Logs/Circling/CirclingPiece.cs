namespace DayBrief.Logs.Circling;

/// <summary>Circling in one sense, from one second of a track to another.</summary>
/// <param name="From">First second.</param>
/// <param name="To">Last second.</param>
/// <param name="Sense">1 to the right, −1 to the left.</param>
/// <param name="TurnedDeg">How far the heading over the ground turned, degrees, positive.</param>
internal readonly record struct CirclingPiece(int From, int To, int Sense, double TurnedDeg)
{
    public double Turns => TurnedDeg / 360;
}
