using DayBrief.Service.Commands;

return await Verbs.RunAsync(args);
