using System.Reflection;
using DayBrief.Service.Infrastructure;
using DayBrief.Soundings;
using DayBrief.Texts;

namespace DayBrief.Service.Languages;

/// <summary>Every <see cref="Words"/> that the programs can make, found in what the compiler made of them: whichever call,
/// switch or variable it passes through, a text becomes a remark or a refusal only as <see cref="Words"/>.</summary>
internal static class CompiledWords
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly IReadOnlyList<(string Text, string Place)> Found = [.. Read()];

    /// <summary>The formats, each with a place that says it.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = Found
        .Where(found => found.Text.Any(char.IsLetter) && found.Text != NotConstant)
        .GroupBy(found => found.Text).ToDictionary(same => same.Key, same => same.First().Place);

    /// <summary>Places that make words of a text which is known only when the program runs, so that nobody can translate it.</summary>
    public static IReadOnlyList<string> Unknown { get; } = [.. Found.Where(found => found.Text == NotConstant).Select(found => found.Place)];

    private static string NotConstant => "\0";

    private static IEnumerable<(string Text, string Place)> Read() =>
        from assembly in new[] { typeof(Sounding).Assembly, typeof(Language).Assembly }
        from type in assembly.GetTypes()
        where type != typeof(Words) && !ForPrograms(type)
        from method in type.GetMethods(Everything).Concat<MethodBase>(type.GetConstructors(Everything))
        from text in Of([.. Instruction.Of(method)])
        select (text, $"{type.FullName}.{method.Name}");

    /// <summary>What only programs are told, always in English: problem details without a page, and verbs of the command line.</summary>
    private static bool ForPrograms(Type type) => type == typeof(Problem) || type.Namespace == typeof(Commands.Verbs).Namespace;

    private static IEnumerable<string> Of(Instruction[] code)
    {
        var open = new Stack<Written>();
        for (var i = 0; i < code.Length; i++)
        {
            if (code[i].Called is not { } called || called.DeclaringType != typeof(Words))
                continue;
            if (called.Name == "op_Implicit")
            {
                foreach (var text in Plain(code, i))
                    yield return Escaped(text);
                continue;
            }

            if (called.IsConstructor)
                open.Push(new("", 0, Length: code[i - 2].Number!.Value, Holes: code[i - 1].Number!.Value));
            else if (called.Name == nameof(Words.AppendLiteral))
                open.Push(open.Pop().Longer(code[i - 1].Text!));
            else if (called.Name == nameof(Words.AppendFormatted))
                open.Push(open.Pop().Holed(code[i - 1].Text));
            while (open.TryPeek(out var top) && top is { Length: 0, Holes: 0 })
                yield return open.Pop().Format;
        }
    }

    private static string Escaped(string text) => text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);

    /// <summary>The texts that can lie before a conversion: the one before it, those that jump to it, those kept in its variable.</summary>
    private static IEnumerable<string> Plain(Instruction[] code, int at)
    {
        var before = code[at - 1];
        if (before.Called is { DeclaringType.Name: nameof(Language), Name: nameof(Language.Text) })
            return [];
        if (before.Variable is { } variable)
            return code.Zip(code.Skip(1)).Where(pair => pair.Second.Kept == variable).Select(pair => pair.First.Text ?? NotConstant);
        return code.Zip(code.Skip(1)).Where(pair => pair.Second.Target == code[at].Offset).Select(pair => pair.First.Text ?? NotConstant)
            .Append(before.Text ?? NotConstant);
    }

    /// <summary>Words that are being written, and how much of them is still to come: the compiler says so at their start.</summary>
    private sealed record Written(string Format, int Next, int Length, int Holes)
    {
        public Written Longer(string text) => this with { Format = Format + Escaped(text), Length = Length - text.Length };

        public Written Holed(string? format) =>
            this with { Format = $"{Format}{{{Next}{(format is null ? "" : ":")}{format}}}", Next = Next + 1, Holes = Holes - 1 };
    }
}
