namespace DayBrief.Service.Commands;

/// <summary>The inputs that are done, kept in a file so that a stopped run goes on where it was. An input is written down only after
/// its line has left us.</summary>
internal sealed class DoneInputs
{
    private const int Together = 64;

    private readonly string? _file;
    private readonly HashSet<string> _before = new(StringComparer.Ordinal);
    private readonly List<string> _new = [];

    public DoneInputs(string? file)
    {
        _file = file;
        if (file is not null && File.Exists(file))
            _before.UnionWith(File.ReadLines(file));
    }

    public bool Holds(string input) => _before.Contains(input);

    public async Task AddAsync(string input, TextWriter output)
    {
        if (_file is null)
            return;
        _new.Add(input);
        if (_new.Count >= Together)
            await FlushAsync(output);
    }

    public async Task FlushAsync(TextWriter output)
    {
        await output.FlushAsync();
        if (_file is not null && _new.Count > 0)
            await File.AppendAllLinesAsync(_file, _new);
        _new.Clear();
    }
}
