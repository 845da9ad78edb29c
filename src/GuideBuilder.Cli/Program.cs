using GuideBuilder.Cli;

return (int)Shell.Run(args);
