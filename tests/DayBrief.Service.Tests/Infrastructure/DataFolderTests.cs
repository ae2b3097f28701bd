namespace DayBrief.Service.Infrastructure;

public sealed class DataFolderTests
{
    /// <summary>What `dotnet clean` deletes lies below the program; the account's own data do not.</summary>
    [Fact]
    public void Without_a_setting_the_data_lie_in_the_accounts_own_folder_and_not_in_the_build()
    {
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        Assert.SkipWhen(own.Length == 0, "This account has no folder of its own.");
        var root = DataFolder.PathFor(null);
        Assert.Equal(Path.Combine(own, "DayBrief"), root);
        Assert.False(root.StartsWith(AppContext.BaseDirectory, StringComparison.Ordinal));
        Assert.Equal(root, DataFolder.PathFor("  "));
    }

    [Fact]
    public void The_setting_counts_and_the_folder_is_made()
    {
        var path = Path.Combine(Path.GetTempPath(), $"daybrief-folder-{Guid.NewGuid():N}", "below");
        Assert.Equal(path, new DataFolder(path).Root);
        Assert.True(Directory.Exists(path));
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    [Fact]
    public void Folder_and_store_are_for_the_services_own_account_only()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("There are no such modes.");
            return;
        }

        var folder = new DataFolder(Path.Combine(Path.GetTempPath(), $"daybrief-folder-{Guid.NewGuid():N}"));
        try
        {
            using var database = new Database(folder);
            database.Write("people", people => people.Insert(new LiteDB.BsonDocument { ["_id"] = 1 }));
            const UnixFileMode Others = (UnixFileMode)0b000_111_111;
            Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(folder.Root) & Others);
            Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(folder.DatabasePath) & Others);
        }
        finally
        {
            Directory.Delete(folder.Root, recursive: true);
        }
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_one_answer_that_says_what_to_do()
    {
        var file = Path.GetTempFileName();
        var refused = Assert.Throws<UnusableSettingException>(() => new DataFolder(Path.Combine(file, "below")));
        File.Delete(file);
        Assert.Contains(DataFolder.Variable, refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', refused.Message);
    }
}
