namespace DayBrief.Service.Languages;

public sealed class SourceLiteralsTests
{
    [Theory]
    [InlineData("\"plain\")", "plain")]
    [InlineData("$\"{a:0.0} of {Of(b, \"x: y\")} and {(c ? \"d\" : \"e\")}\")", "{0:0.0} of {1} and {2}")]
    [InlineData("$\"a {{brace}} \\\"quoted\\\" {x.ToString(\"0:0\"):#,0}\", other)", "a {{brace}} \"quoted\" {0:#,0}")]
    [InlineData("count, $\"one\", $\"{count} many\")", "one|{0} many")]
    [InlineData("wet ? \"rain\" : \"sun\", Inner(\"no\"), ')', \"after\")", "rain|sun|after")]
    [InlineData("text)", "")]
    public void Texts_are_read_as_the_compiler_reads_them(string source, string texts) =>
        Assert.Equal(texts, string.Join('|', SourceLiterals.Directly(source, 0)));
}
