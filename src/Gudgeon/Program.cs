using System.Text;
using Gudgeon.Cli;

Console.OutputEncoding = Encoding.UTF8;
return App.Run(args);
