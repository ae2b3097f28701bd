Console.WriteLine("DayBrief");
