using System.Buffers.Binary;
using System.Reflection;
using System.Reflection.Emit;

namespace DayBrief.Service.Languages;

/// <summary>One instruction of a compiled method, as far as texts are concerned (ECMA-335, partition III).</summary>
internal sealed record Instruction(int Offset)
{
    private static readonly Dictionary<short, OpCode> Codes = typeof(OpCodes).GetFields()
        .Select(field => (OpCode)field.GetValue(null)!).ToDictionary(code => code.Value);

    /// <summary>The text that it loads; null also for "no text".</summary>
    public string? Text { get; private init; }

    /// <summary>The whole number that it loads.</summary>
    public int? Number { get; private init; }

    /// <summary>The method that it calls.</summary>
    public MethodBase? Called { get; private init; }

    /// <summary>Where it jumps to.</summary>
    public int? Target { get; private init; }

    /// <summary>The variable that it loads.</summary>
    public int? Variable { get; private init; }

    /// <summary>The variable that it keeps into.</summary>
    public int? Kept { get; private init; }

    public static IEnumerable<Instruction> Of(MethodBase method)
    {
        if (method.GetMethodBody()?.GetILAsByteArray() is not { } bytes)
            yield break;
        for (var at = 0; at < bytes.Length;)
        {
            var offset = at;
            var code = Codes[bytes[at] == 0xFE ? (short)(0xFE00 | bytes[at + 1]) : bytes[at]];
            at += code.Size;
            var length = Length(code.OperandType, bytes, at);
            yield return Read(new(offset), code, bytes.AsSpan(at, length), at + length, method);
            at += length;
        }
    }

    private static Instruction Read(Instruction plain, OpCode code, ReadOnlySpan<byte> operand, int end, MethodBase method)
    {
        var value = operand.Length switch
        {
            1 => (sbyte)operand[0],
            2 => BinaryPrimitives.ReadInt16LittleEndian(operand),
            4 => BinaryPrimitives.ReadInt32LittleEndian(operand),
            _ => (code.Name![^1] - '0') is >= 0 and <= 8 and var last ? last : 0,
        };
        return code.OperandType switch
        {
            OperandType.InlineString => plain with { Text = method.Module.ResolveString(value) },
            OperandType.InlineMethod => plain with { Called = Resolved(method, value) },
            OperandType.ShortInlineBrTarget or OperandType.InlineBrTarget => plain with { Target = end + value },
            _ when code.Name!.StartsWith("ldc.i4", StringComparison.Ordinal) => plain with { Number = value },
            _ when code.Name.StartsWith("ldloc", StringComparison.Ordinal) && !code.Name.StartsWith("ldloca", StringComparison.Ordinal) => plain with { Variable = value },
            _ when code.Name.StartsWith("stloc", StringComparison.Ordinal) => plain with { Kept = value },
            _ => plain,
        };
    }

    private static MethodBase? Resolved(MethodBase method, int token) => method.Module.ResolveMethod(
        token,
        method.DeclaringType is { IsGenericType: true } type ? type.GetGenericArguments() : null,
        method.IsGenericMethod ? method.GetGenericArguments() : null);

    private static int Length(OperandType type, byte[] bytes, int at) => type switch
    {
        OperandType.InlineNone => 0,
        OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
        OperandType.InlineVar => 2,
        OperandType.InlineI8 or OperandType.InlineR => 8,
        OperandType.InlineSwitch => 4 + (4 * BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(at))),
        _ => 4,
    };
}
