using DayBrief.Texts;

namespace DayBrief.Service.Infrastructure;

/// <summary>Whether there is room on the disk of the data folder. Writing stops while some is left: a store that meets the end of
/// the disk in the middle of a write is lost to its readers too.</summary>
/// <param name="free">Free bytes.</param>
internal sealed class Room(Func<long> free)
{
    /// <summary>Two of the largest ascents, a brief's files, and the store's own copies of both.</summary>
    public const long Least = 32L * 1024 * 1024;

    public Room(DataFolder folder)
        : this(() => new DriveInfo(folder.Root).AvailableFreeSpace)
    {
    }

    public bool IsThere => free() >= Least;

    /// <exception cref="NoRoomException">There is none.</exception>
    public void Check()
    {
        if (free() is var left && left < Least)
            throw new NoRoomException(left);
    }
}

/// <summary>The disk is full, or nearly.</summary>
internal sealed class NoRoomException(long left) : IOException($"{left / 1024} kB are free on the disk of the data folder; writing needs {Room.Least / 1024} kB.")
{
    public const string Code = "no-room";

    public static Words Words => Words.Of(
        $"The disk of this service is full: what is kept can be read, nothing new can be kept. What you sent was not kept. Tell whoever runs the service to make room; then it goes on by itself.");
}
