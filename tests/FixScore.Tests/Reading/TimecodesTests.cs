using FixScore.Reading;

namespace FixScore.Tests.Reading;

public sealed class TimecodesTests
{
    [Theory]
    [InlineData("0:00:00", 0)]
    [InlineData("0:04:35", 275)]
    [InlineData("00:00:59", 59)]
    [InlineData("1:00:00", 3600)]
    [InlineData("100:59:59", 363599)]
    public void Hours_minutes_and_seconds_are_read(string text, int seconds)
    {
        Assert.True(Timecodes.TryParse(text, out var time));
        Assert.Equal(seconds, time.TotalSeconds);
    }

    [Theory]
    [InlineData("")]
    [InlineData("4:35")]
    [InlineData("0:60:00")]
    [InlineData("0:00:60")]
    [InlineData("0:4:35")]
    [InlineData("0:04:35\n")]
    [InlineData("-1:00:00")]
    [InlineData("+1:00:00")]
    [InlineData(" 1:00:00")]
    [InlineData(":00:00")]
    [InlineData("0:00:00.5")]
    [InlineData("0:00:00:00")]
    [InlineData("٠:٠٠:٠٠")]
    [InlineData("99999999999:00:00")]
    public void Everything_else_is_refused(string text) => Assert.False(Timecodes.TryParse(text, out _));
}
