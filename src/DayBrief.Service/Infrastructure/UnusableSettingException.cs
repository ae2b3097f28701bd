namespace DayBrief.Service.Infrastructure;

/// <summary>A setting with which the service does not start.</summary>
internal sealed class UnusableSettingException(string message) : Exception(message);
