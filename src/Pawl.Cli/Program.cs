Console.WriteLine("pawl");
